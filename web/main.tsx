import { render } from 'preact'

const root = document.getElementById('app')
if (root) {
  render(
    <main>
      <h1>Underlane</h1>
      <p>Plans trenchless bores made with pneumatic piercing tools. It plans; it does not permit.</p>
    </main>,
    root,
  )
}

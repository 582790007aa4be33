import 'leaflet/dist/leaflet.css'
import { CircleMarker, CRS, LatLngBounds, Map as LeafletMap, Polyline, SVG } from 'leaflet'
import { useEffect, useRef } from 'preact/hooks'
import type { GeoPosition } from '../../shared/core/kinds.ts'
import { FORM } from '../words/form-words.ts'

type Props = { readonly launch: GeoPosition; readonly reception: GeoPosition }

/** Around the line, as a share of it, so that both pits lie well inside. */
const MARGIN = 0.3
const CLOSEST_ZOOM = 22

/** The line between the pits on plain ground: no tiles, nothing fetched. */
export function LineMap({ launch, reception }: Props) {
  const place = useRef<HTMLElement>(null)
  const shownMap = useRef<LeafletMap | null>(null)
  useEffect(() => {
    if (place.current === null) return
    const map = new LeafletMap(place.current, {
      crs: CRS.EPSG3857,
      maxZoom: CLOSEST_ZOOM,
      zoomAnimation: false,
      fadeAnimation: false,
      attributionControl: false,
      renderer: new SVG(),
    })
    shownMap.current = map
    return () => {
      shownMap.current = null
      map.remove()
    }
  }, [])
  const [launchLongitude, launchLatitude] = launch
  const [receptionLongitude, receptionLatitude] = reception
  useEffect(() => {
    const map = shownMap.current
    if (map === null) return
    const from = [launchLatitude, launchLongitude] as const
    const to = [receptionLatitude, receptionLongitude] as const
    map.fitBounds(new LatLngBounds([...from], [...to]).pad(MARGIN), { animate: false })
    const layers = [
      new Polyline([[...from], [...to]], { className: 'map-bore', weight: 4 }),
      new CircleMarker([...from], { className: 'map-launch', radius: 9 }).bindTooltip(FORM.map.launch, {
        permanent: true,
        direction: launchLatitude > receptionLatitude ? 'top' : 'bottom',
      }),
      new CircleMarker([...to], { className: 'map-reception', radius: 9 }).bindTooltip(FORM.map.reception, {
        permanent: true,
        direction: launchLatitude > receptionLatitude ? 'bottom' : 'top',
      }),
    ]
    for (const layer of layers) layer.addTo(map)
    return () => {
      for (const layer of layers) layer.remove()
    }
  }, [launchLongitude, launchLatitude, receptionLongitude, receptionLatitude])
  return <section ref={place} class="line-map" aria-label={FORM.map.region} />
}

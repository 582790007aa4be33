/**
 * Passwords that everybody tries first, from memory, no source: the words of the usual lists, longer ones made of them,
 * keyboard runs, and the words of this trade. Compared without capitals, signs, and digits at the end.
 */
const WORDS = `
password passwords passwort passwordpassword mypassword newpassword thepassword letmein letmeinnow letmeinplease welcome
welcomehome welcometo admin administrator adminadmin adminpassword root superuser superman batman spiderman iloveyou
iloveyouforever iloveyousomuch princess sunshine football baseball basketball hockey soccer dragon monkey shadow master
mustang michael jordan jennifer jessica ashley daniel computer internet whatever trustno trustnoone starwars pokemon
hunter buster killer pepper ginger cookie chocolate cheese summer winter spring autumn monday friday january
february september october november december liverpool arsenal chelsea barcelona manchester yankees cowboys steelers
freedom secret secrets topsecret access accessgranted login loginlogin guest default changeme changemenow temporary
temppassword testtest testing testingtesting qwerty qwertyuiop qwertyuiopasdfghjkl qwertyqwerty asdfghjkl asdfghjklzxcvbnm
zxcvbnm qazwsxedc qazwsxedcrfv azertyuiop abcdefghijkl abcdefghijklm abcdefghijklmnop abcabcabcabc correcthorsebatterystaple
correcthorse horsebattery staplebattery contrasena contraseña micontrasena bienvenido bienvenidos teamo tequiero
tequieromucho hola holahola holamundo estrella princesa mariposa futbol realmadrid mexico america
construction contractor excavator excavation backhoe trench trenching trenchless boring directional underground utility
utilities plumber plumbing pipeline pipefitter sewer waterworks foreman company company office officeoffice
`
const RUNS = `
123456789012 1234567890123 12345678910 1234567891011 123456789101112 012345678901 0123456789012 111111111111 000000000000
121212121212 123123123123 123412341234 123456123456 1q2w3e4r5t6y 1q2w3e4r5t6y7u 1q2w3e4r5t6y7u8i q1w2e3r4t5y6 1qaz2wsx3edc
1qaz2wsx3edc4rfv zaq12wsxcde3 qwerty123456 qwerty1234567890 password1234 password12345 password123456 password123password
passw0rd1234 p4ssw0rd1234 admin1234567 admin123456789 abc123456789 abcd12345678 a1b2c3d4e5f6 letmein12345 welcome12345
iloveyou1234 asdf12345678 asdfghjkl123 qwe123qwe123 abc123abc123 147258369147 159753159753 987654321098 098765432109
`
const listed = (text: string): readonly string[] => text.split(/\s+/).filter((word) => word !== '')

export const COMMON_PASSWORDS: ReadonlySet<string> = new Set([...listed(WORDS), ...listed(RUNS)])

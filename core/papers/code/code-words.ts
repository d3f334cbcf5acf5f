/**
 * What most circuit files hold, for packing them small: what stands last is cheapest. Frozen: payloads that begin "GS1:" can be
 * unpacked with these very characters alone. A better list is a new one, for payloads of another beginning.
 */
export const CODE_WORDS = [
  '"readings":[{"revisions":[{"custom":"converter","outV":,"efficiency":"diode","forwardV":"resistor","ohms":',
  '"key-switch","changeover-switch","bus-bar","breaker","reset":"manual","auto","held","closed":false',
  '"plug","ways":[{"ratingA":,"fitted":true},"fedSide":"sockets","pins","functions":["motor","startOhm":,"startS":',
  '"factory-feed","restV":12.6,"runningV":13.8,"sourceMilliohm":,"fuseA":,"spareA":,"existingOhm":,"monitored":"yes","no","unknown","pulsed":"no","always":true',
  '"load","model":"resistor","constant-current","constant-power","amps":,"polarised":,"continuous":false,"startA":,',
  '"splice","barrel":"yellow","red","blue","tap":"piercing","crimp","solder","chassis","surface":"painted","clean","jointMilliohm":',
  '"fuse-block","ratedA":100,"posts":6,"ground-strip","switch","momentary":',
  '"relay","contact":"changeover","twin-make","make","coilOhm":90,"suppression":"diode","none",',
  '"lamp","type":"filament","led","watts":,"ratedV":12.8,"minV":9,"maxV":32,"mustBeOffAtRest":',
  '"battery","capacityAh":,"internalMilliohm":,"chassisBondMilliohm":null,"body":"blade","mini-blade","maxi-blade","bolt","holderA":',
  '"covers":{"87a":"bare","covered","cavity"},"turn":90,"flip":true,"turn":270,"turn":180,',
  '"main":"winch","starter","alternator","measured":false,"insulationC":105,"ambientC":60,"bundle":,"sheathed":true,"fixed":["rating"],"size"],',
  '"ends":{"from":{"terminal":"ring","stud":"M8"},"to":{"terminal":"tab","terminal":"ferrule"}},',
  '"situations":[{"id":"working","name":"","set":{"engine":"running","s1":"on"}}]}',
  '{"format":"groundstrap","version":1,"sheet":{"title":"","vehicle":"","drawnBy":"","revision":"A","date":"2026-',
  '","notes":""},',
  '"system":{"nominalV":12,"conductorC":20,"cautionDropPercent":,"faultDropPercent":,"capacityTable":"vehicle","alternatorA":,"baseLoadA":,"sizes":"mm2"},"parts":[',
  '{"id":"k1","kind":"relay","label":"","at":[],"props":{"ratingA":10}},{"id":"f1","kind":"fuse","label":"","at":[,"props":{"ratingA":15,"body":"blade"}},',
  '],"wires":[{"id":"w1","from":"bat.+","to":"f1.1","size":"2.5 mm2","metres":0.5,"colour":"RDWH"},{"id":"w2","from":"f1.2","to":"k1.30","size":"1.5 mm2","metres":1.2,"colour":"BN","via":[[',
  '"},{"id":"w3","from":"k1.87","to":"la1.+","size":"16 AWG","metres":3,"colour":"BK"},{"id":"w1","from":"gs.1","to":"bat.-","size":"14 AWG","metres":0.',
].join("");

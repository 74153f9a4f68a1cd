/** A file of cards as it is imported and exported, with each kind of row; shown on the screen and in README.md. */
export function cardFileExample(zones: readonly string[], currency: string): string {
  const [near = "Near", far = "Far"] = zones;
  return `row,what,value,${near},${far}
card,service,Parcels
card,from,2026-07-12
card,to,2026-12-31
card,currency,${currency}
card,source,"the carrier's list of 1 July, page 4"
card,read on,2026-07-03
band,longest side,48 in
band,length and girth,108 in
band,heaviest,70 lb
step,up to,8 oz,4.60,5.20
step,up to,15.999 oz,5.30,6.40
step,up to,1 lb,6.10,7.40
further,each,1 lb,0.85,–
size,divisor,139 in³ per lb
size,more than,1728 in³
size,each side,up to 1 in
size,weight,up to 1 lb
fee,name,Long parcel
fee,longest side over,22 in
fee,but not over,30 in
fee,any weight,,4.00,4.00
fee,name,Peak season
fee,from,2026-10-04
fee,up to,3 lb,0.40,0.50
fee,any weight,,0.95,`;
}

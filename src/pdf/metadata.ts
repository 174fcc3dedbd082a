/**
 * What the file says of itself: the metadata packet (XMP, ISO 16684-1), with every word escaped.
 */

/** What a paper is called and whose it is. */
export interface DocumentFacts {
  readonly title: string;
  /** As in BCP 47: `en-US`. */
  readonly language: string;
  readonly author?: string;
  readonly subject?: string;
  readonly keywords?: string;
  readonly creationDate: Date;
}

/** The program's name, as it stands in every file. */
export const producer = 'Kettlebook';

/** The packet. It claims PDF/UA-1 and PDF/A-2a; the writer sees to it that the claims hold. */
export function metadataPacket(facts: DocumentFacts): string {
  const date = `${facts.creationDate.toISOString().slice(0, 19)}Z`;
  const optional = (value: string | undefined, xml: (words: string) => string): string =>
    value === undefined ? '' : xml(escapeXml(value));
  return `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<dc:format>application/pdf</dc:format>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(facts.title)}</rdf:li></rdf:Alt></dc:title>
<dc:language><rdf:Bag><rdf:li>${escapeXml(facts.language)}</rdf:li></rdf:Bag></dc:language>
${optional(facts.author, (words) => `<dc:creator><rdf:Seq><rdf:li>${words}</rdf:li></rdf:Seq></dc:creator>\n`)}${optional(
  facts.subject,
  (words) =>
    `<dc:description><rdf:Alt><rdf:li xml:lang="x-default">${words}</rdf:li></rdf:Alt></dc:description>\n`,
)}${optional(facts.keywords, (words) => `<pdf:Keywords>${words}</pdf:Keywords>\n`)}<pdf:Producer>${producer}</pdf:Producer>
<xmp:CreatorTool>${producer}</xmp:CreatorTool>
<xmp:CreateDate>${date}</xmp:CreateDate>
<pdfaid:part>2</pdfaid:part>
<pdfaid:conformance>A</pdfaid:conformance>
<pdfuaid:part>1</pdfuaid:part>
</rdf:Description>
${uaSchema}
</rdf:RDF></x:xmpmeta>
<?xpacket end="r"?>`;
}

/** PDF/A wants every schema it does not know itself described in the file; that of PDF/UA is one. */
const uaSchema = `<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
<pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
<pdfaProperty:name>part</pdfaProperty:name>
<pdfaProperty:valueType>Integer</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category>
<pdfaProperty:description>Part of ISO 14289 the file conforms to</pdfaProperty:description>
</rdf:li></rdf:Seq></pdfaSchema:property>
</rdf:li></rdf:Bag></pdfaExtension:schemas>
</rdf:Description>`;

const marks: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

/** Letters XML cannot hold at all are left out. */
function escapeXml(text: string): string {
  return text
    .replace(/[&<>"']/g, (letter) => marks[letter] ?? '')
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '');
}

/*
 * Makes a film inside the browser whose pictures show their own number as twelve black or white squares. Sparse: one
 * picture a second, thirty a second round the moments that matter. Resolves to { bytes, times }: a WebM file, and when
 * each picture begins, s. WebM as the Matroska specification (RFC 9559) lays it out; VP8 from WebCodecs.
 */
async function makeFilm(duration, moments) {
  const PER_SECOND = 30;
  const times = [];
  for (let second = 0; second < duration; second++) {
    const dense = moments.some(function (at) { return Math.abs(at - second - 0.5) < 2; });
    for (let k = 0; k < (dense ? PER_SECOND : 1); k++) { times.push(Math.round((second + k / PER_SECOND) * 1000) / 1000); }
  }
  const canvas = new OffscreenCanvas(64, 48);
  const pen = canvas.getContext("2d");
  const chunks = [];
  const encoder = new VideoEncoder({
    output: function (chunk) {
      const bytes = new Uint8Array(chunk.byteLength);
      chunk.copyTo(bytes);
      chunks.push({ at: Math.round(chunk.timestamp / 1000), key: chunk.type === "key", bytes: bytes });
    },
    error: function (e) { throw e; }
  });
  encoder.configure({ codec: "vp8", width: 64, height: 48, bitrate: 4000000, latencyMode: "quality" });
  for (let n = 0; n < times.length; n++) {
    for (let bit = 0; bit < 12; bit++) {
      pen.fillStyle = (n >> bit) & 1 ? "#ffffff" : "#000000";
      pen.fillRect((bit % 4) * 16, Math.floor(bit / 4) * 16, 16, 16);
    }
    const frame = new VideoFrame(canvas, { timestamp: Math.round(times[n] * 1e6) });
    encoder.encode(frame, { keyFrame: true });
    frame.close();
    if (encoder.encodeQueueSize > 20) { await new Promise(function (go) { setTimeout(go, 0); }); }
  }
  await encoder.flush();
  if (chunks.length !== times.length) { throw new Error(chunks.length + " pictures of " + times.length + " were kept"); }

  function number(value, length) {
    const out = [];
    for (let i = length - 1; i >= 0; i--) { out.push(Math.floor(value / Math.pow(256, i)) % 256); }
    return out;
  }
  function size(length) { return [0x10 | (length >> 24), (length >> 16) & 255, (length >> 8) & 255, length & 255]; }
  function el(id, body) { return number(id, id > 0xffffff ? 4 : id > 0xffff ? 3 : id > 0xff ? 2 : 1).concat(size(body.length), Array.from(body)); }
  function text(value) { return Array.from(new TextEncoder().encode(value)); }
  function float(value) { const view = new DataView(new ArrayBuffer(8)); view.setFloat64(0, value); return Array.from(new Uint8Array(view.buffer)); }

  const head = el(0x1a45dfa3, [].concat(el(0x4286, [1]), el(0x42f7, [1]), el(0x42f2, [4]), el(0x42f3, [8]), el(0x4282, text("webm")),
    el(0x4287, [2]), el(0x4285, [2])));
  const info = el(0x1549a966, [].concat(el(0x2ad7b1, number(1000000, 4)), el(0x4489, float(duration * 1000)),
    el(0x4d80, text("test")), el(0x5741, text("test"))));
  const tracks = el(0x1654ae6b, el(0xae, [].concat(el(0xd7, [1]), el(0x73c5, [1]), el(0x83, [1]), el(0x86, text("V_VP8")),
    el(0xe0, [].concat(el(0xb0, [64]), el(0xba, [48]))))));
  const clusters = [];
  chunks.forEach(function (chunk) {
    if (chunk.key) { clusters.push({ at: chunk.at, body: el(0xe7, number(chunk.at, 4)) }); }
    const cluster = clusters[clusters.length - 1];
    cluster.body = cluster.body.concat(el(0xa3, [0x81].concat(number(chunk.at - cluster.at, 2), [chunk.key ? 0x80 : 0], Array.from(chunk.bytes))));
  });
  const points = function (offset) {
    let at = offset;
    return el(0x1c53bb6b, clusters.flatMap(function (cluster) {
      const point = el(0xbb, el(0xb3, number(cluster.at, 4)).concat(el(0xb7, el(0xf7, [1]).concat(el(0xf1, number(at, 4))))));
      at += cluster.body.length + 8;
      return point;
    }));
  };
  const cues = points(points(0).length + info.length + tracks.length);
  const body = [info, tracks, cues].concat(clusters.map(function (cluster) { return el(0x1f43b675, cluster.body); }));
  const length = body.reduce(function (sum, part) { return sum + part.length; }, 0);
  const bytes = new Uint8Array(head.length + 8 + length);
  let at = 0;
  [head, number(0x18538067, 4), size(length)].concat(body).forEach(function (part) { bytes.set(part, at); at += part.length; });
  return { bytes: bytes, times: times };
}

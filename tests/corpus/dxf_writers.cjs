// Draws made-up parts and writes each through several DXF writers that share no code with each other.
// Usage: node dxf_writers.cjs OUT_FOLDER COUNT   (with the writers installed where node finds them)
const fs = require("fs");
const path = require("path");
const { createRequire } = require("module");
const load = createRequire(path.join(process.cwd(), "index.js"));

function chance(seed) { // mulberry32, a small public-domain generator, so that every run draws the same
  return () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const between = (r, low, high) => low + r() * (high - low);
const rad = (deg) => (deg * Math.PI) / 180;

function star(r, x, y, size) { // a closed polygon about a centre, never crossing itself
  const n = 3 + Math.floor(r() * 9);
  return Array.from({ length: n }, (_, i) => {
    const d = between(r, 0.6, 1) * size, a = ((i + between(r, -0.2, 0.2)) / n) * 2 * Math.PI;
    return [x + d * Math.cos(a), y + d * Math.sin(a), 0];
  });
}

function sides(points) { // loose lines around a polygon
  return points.map((p, i) => ({ line: [p, points[(i + 1) % points.length]] }));
}

function shuffled(r, list) {
  const copy = list.map((one) => (one.line && r() < 0.5 ? { line: [one.line[1], one.line[0]] } : one));
  for (let i = copy.length - 1; i > 0; i--) {
    const j = Math.floor(r() * (i + 1));
    [copy[i], copy[j]] = [copy[j], copy[i]];
  }
  return copy;
}

function slot(x, y, half, radius) { // two lines and two half circles
  return [
    { line: [[x - half, y - radius], [x + half, y - radius]] },
    { arc: [x + half, y, radius, 270, 90] },
    { line: [[x + half, y + radius], [x - half, y + radius]] },
    { arc: [x - half, y, radius, 90, 270] },
  ];
}

const PARTS = [
  (r, x, y) => [{ circle: [x, y, between(r, 2, 20)] }],
  (r, x, y) => [{ poly: star(r, x, y, 20), closed: true }],
  (r, x, y) => shuffled(r, sides(star(r, x, y, 20))),
  (r, x, y) => shuffled(r, slot(x, y, between(r, 3, 12), between(r, 1, 8))),
  (r, x, y) => [{ poly: star(r, x, y, 18).map((p) => [p[0], p[1], between(r, -0.15, 0.3)]), closed: true }],
  (r, x, y) => [{ circle: [x, y, 20] }, { circle: [x, y, 14] }, { poly: star(r, x, y, 10), closed: true }],
  (r, x, y) => [{ ellipse: [x, y, between(r, 8, 20), between(r, -8, 8), between(r, 0.2, 0.9)] }],
  (r, x, y) => {
    // GDAL draws eight chords a control point: with fewer points its own chords would be 0.1 % off
    const n = 24 + Math.floor(r() * 16);
    const around = Array.from({ length: n }, (_, i) => {
      const d = between(r, 14, 20), a = (i / n) * 2 * Math.PI;
      return [x + d * Math.cos(a), y + d * Math.sin(a), 0];
    });
    return [{ spline: [...around, around[0]] }, { circle: [x, y, 1] }];
  },
  (r, x, y) => [{ poly: star(r, x, y, 20), closed: true }, ...shuffled(r, slot(x, y, 4, 2)), { text: [x, y, "A"] }],
  (r, x, y) => [{ poly: [[x - 9, y - 5, 0], [x + 9, y - 5, 1], [x + 9, y + 5, 0], [x - 9, y + 5, 1]], closed: true }],
  (r, x, y) => [{ block: star(r, 0, 0, 8), at: [x, y], turn: between(r, 0, 360), scale: [between(r, 0.5, 2), between(r, -2, -0.5)] }],
  (r, x, y) => [{ hatch: star(r, x, y, 15) }],
];

function parts(seed) {
  const r = chance(seed);
  const count = 1 + Math.floor(r() * 6), list = [];
  for (let i = 0; i < count; i++) {
    const part = PARTS[(seed + Math.floor(r() * PARTS.length)) % PARTS.length];
    list.push(...part(r, (i % 3) * 50, Math.floor(i / 3) * 50));
  }
  return list;
}

function chords(p) { // an arc as straight pieces, for writers without arcs
  const [x, y, radius, low, high] = p, sweep = (((high - low) % 360) + 360) % 360 || 360;
  const n = Math.ceil(sweep);
  return Array.from({ length: n + 1 }, (_, i) => {
    const a = rad(low + (sweep * i) / n);
    return [x + radius * Math.cos(a), y + radius * Math.sin(a)];
  });
}

function moved(b) { // a block's points where its reference puts them
  const c = Math.cos(rad(b.turn)), s = Math.sin(rad(b.turn));
  return b.block.map(([x, y]) => [b.at[0] + c * x * b.scale[0] - s * y * b.scale[1], b.at[1] + s * x * b.scale[0] + c * y * b.scale[1], 0]);
}

const plain = { // what a writer does with a kind it does not know
  hatch: (d, one) => d.poly({ poly: one.hatch, closed: true }),
  block: (d, one) => d.poly({ poly: moved(one), closed: true }),
  spline: (d, one) => d.poly({ poly: one.spline.slice(0, -1), closed: true }),
  ellipse: (d, one) => d.circle({ circle: [one.ellipse[0], one.ellipse[1], one.ellipse[2]] }),
  text: () => undefined,
};

function draw(list, pen) {
  for (const one of list) {
    const kind = Object.keys(one)[0];
    (pen[kind] || ((each) => plain[kind](pen, each)))(one);
  }
  return pen.text_of();
}

const WRITERS = {
  first: (list) => {
    const Drawing = load("dxf-writer"), d = new Drawing();
    d.setUnits("Millimeters");
    d.addLayer("part", Drawing.ACI.RED, "CONTINUOUS").setActiveLayer("part");
    return draw(list, {
      line: ({ line: [a, b] }) => d.drawLine(a[0], a[1], b[0], b[1]),
      arc: ({ arc }) => d.drawArc(...arc),
      circle: ({ circle }) => d.drawCircle(...circle),
      poly: ({ poly, closed }) => d.drawPolyline(poly, closed),
      ellipse: ({ ellipse: [x, y, a, b, k] }) => d.drawEllipse(x, y, a, b, k),
      spline: ({ spline }) => d.drawSpline(spline.map((p) => [p[0], p[1]])),
      text: ({ text }) => d.drawText(text[0], text[1], 3, 0, text[2]),
      text_of: () => d.toDxfString(),
    });
  },
  second: (list) => {
    const { DxfWriter, point3d, point2d, LWPolylineFlags, HatchBoundaryPaths, HatchPolylineBoundary, HatchPredefinedPatterns, pattern, Units } = load("@tarikjabiri/dxf");
    const d = new DxfWriter();
    d.setUnits(Units.Millimeters);
    let blocks = 0;
    return draw(list, {
      line: ({ line: [a, b] }) => d.addLine(point3d(a[0], a[1]), point3d(b[0], b[1])),
      arc: ({ arc: [x, y, r, low, high] }) => d.addArc(point3d(x, y), r, low, high),
      circle: ({ circle: [x, y, r] }) => d.addCircle(point3d(x, y), r),
      poly: ({ poly, closed }) => d.addLWPolyline(poly.map((p) => ({ point: point2d(p[0], p[1]), bulge: p[2] || undefined })), { flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None }),
      ellipse: ({ ellipse: [x, y, a, b, k] }) => d.addEllipse(point3d(x, y), point3d(a, b), k, 0, 2 * Math.PI),
      spline: ({ spline }) => d.addSpline({ controlPoints: spline.map((p) => point3d(p[0], p[1])), degreeCurve: 3 }),
      block: (b) => {
        const block = d.addBlock(`b${blocks++}`);
        block.addLWPolyline(b.block.map((p) => ({ point: point2d(p[0], p[1]) })), { flags: LWPolylineFlags.Closed });
        d.addInsert(block.name, point3d(...b.at), { rotationAngle: b.turn, scaleFactor: { x: b.scale[0], y: b.scale[1], z: 1 } });
      },
      hatch: ({ hatch }) => {
        const edge = new HatchPolylineBoundary();
        hatch.forEach((p) => edge.add({ x: p[0], y: p[1] }));
        const around = new HatchBoundaryPaths();
        around.addPolylineBoundary(edge);
        d.addHatch(around, pattern({ name: HatchPredefinedPatterns.SOLID }));
      },
      text: ({ text }) => d.addText(point3d(text[0], text[1]), 3, text[2]),
      text_of: () => d.stringify(),
    });
  },
  third: (list) => {
    const { DxfDocument } = load("dxf-doc"), kinds = load("dxf-doc/entities"), hatches = load("dxf-doc/entities/hatch");
    const d = new DxfDocument();
    return draw(list, {
      line: ({ line: [a, b] }) => d.addEntity(new kinds.Line(d, a[0], a[1], b[0], b[1])),
      arc: ({ arc }) => d.addEntity(new kinds.Arc(d, ...arc)),
      circle: ({ circle }) => d.addEntity(new kinds.Circle(d, ...circle)),
      poly: ({ poly, closed }) => d.addEntity(new kinds.LwPolyline(d, poly.map((p) => [p[0], p[1]]), closed)),
      ellipse: ({ ellipse }) => d.addEntity(new kinds.Ellipse(d, ...ellipse)),
      hatch: ({ hatch }) => d.addEntity(new hatches.Hatch(d, [new hatches.PolylineBoundaryPath(hatch.map((p) => [p[0], p[1]]))])),
      text: ({ text }) => d.addEntity(new kinds.Text(d, text[2], 3, [text[0], text[1]])),
      text_of: () => d.dxf(),
    });
  },
  fourth: (list) => {
    const { geometries } = load("@jscad/modeling"), { serialize } = load("@jscad/dxf-serializer");
    const shapes = [];
    const line = (points, closed) => shapes.push(geometries.path2.fromPoints({ closed }, points.map((p) => [p[0], p[1]])));
    return draw(list, {
      line: ({ line: ends }) => line(ends, false),
      arc: ({ arc }) => line(chords(arc), false),
      circle: ({ circle }) => line(chords([...circle, 0, 360]).slice(0, -1), true),
      poly: ({ poly, closed }) => line(poly, closed),
      text_of: () => serialize({ unit: "mm" }, ...shapes).join(""),
    });
  },
};

const [folder, count] = [process.argv[2], Number(process.argv[3])];
for (let seed = 0; seed < count; seed++)
  for (const [name, write] of Object.entries(WRITERS))
    fs.writeFileSync(path.join(folder, `${name}-${seed}.dxf`), write(parts(seed)));

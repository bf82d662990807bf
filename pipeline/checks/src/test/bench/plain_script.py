#!/usr/bin/python3
"""The plain script: what a capable user would write: order sheets to mirrored true-size tiled PDFs and lists.

General libraries only (openpyxl, reportlab, Pillow). It does less than the tool: a cone's picture is placed flat, flags carry words but no code,
there are no proofs, no ledger, no second look at what was written, and the press day is a plain list.
usage: plain_script.py SHOP OUT      (SHOP: rules, inbox, inbox/artwork as made_shop.py makes them)
"""
import collections, csv, datetime as dt, io, json, math, pathlib, re, struct, sys, zlib
from concurrent.futures import ThreadPoolExecutor

MM = 72 / 25.4
SHOP_DIR, OUT = map(pathlib.Path, sys.argv[1:3])
ART = SHOP_DIR / "inbox" / "artwork"


# ---------------------------------------------------------------- rulebook
def mm(s):
    s = (s or "").strip()
    if not s: return None
    m = re.fullmatch(r'(?:(\d+)\s+)?(\d+)/(\d+)\s*(in|"|mm|cm)?|([\d.]+)\s*(in|"|mm|cm|pt)?', s)
    if not m: raise ValueError(f"not a length: {s!r}")
    v = int(m[1] or 0) + int(m[2]) / int(m[3]) if m[2] else float(m[5])
    return v * {"in": 25.4, '"': 25.4, "cm": 10, "pt": 1 / MM}.get(m[4] or m[6], 1)


def table(name):
    with open(SHOP_DIR / "rules" / f"{name}.csv", newline="", encoding="utf-8") as f:
        return list(csv.DictReader(f))


blanks, alias = {}, {}
for r in table("blanks"):
    blanks[r["sku"]] = r
    for x in [r["sku"], *r["aliases"].split("|")]:
        alias[x.strip().lower()] = r["sku"]
heats = table("heat-sources")
press = {(r["sku"] or r["material"], r["heat_kind"]): r for r in table("press-settings")}
designs = {r["design"]: r for r in table("designs")}
texts = collections.defaultdict(list)
for r in table("texts"):
    texts[r["design"]].append(r)
headers = {r["header"].strip().lower(): r["field"] for r in table("order-columns")}
shop = {r["key"]: r["value"] for r in table("shop")}
paper = next(r for r in table("papers") if r["id"] == shop["paper"])
PW, PH = mm(paper["width"]), mm(paper["height"])
MT, MR, MB, ML = (mm(paper["margin_" + k]) for k in ("top", "right", "bottom", "left"))
GAP, FLAG, AW, AH = mm(shop["trim_gap"]), mm(shop["flag_depth"]) + mm(shop["trim_border"]), PW - ML - MR, PH - MT - MB


def heat_and_band(b):
    """(heat source, setting, around, up, circumference), or None."""
    top, foot, flat, hw = mm(b["top_diameter"]), mm(b["bottom_diameter"]), b["shape"] == "flat", mm(b["handle_width"]) or 0
    circ = mm(b["width"]) if flat else mm(b["circumference"]) or math.pi * (top + (foot or top)) / 2
    for h in heats:
        if (h["kind"] == "flat press") != flat: continue
        s = press.get((b["sku"], h["kind"])) or press.get((b["material"], h["kind"]))
        if not s or s["allowed"] != "yes": continue
        if not flat and not (mm(h["min_diameter"]) or 0) <= circ / math.pi <= (mm(h["max_diameter"]) or 1e9): continue
        if h["kind"] == "mug press" and (not hw or b["shape"] == "cone"): continue
        up = mm(b["height"]) - (mm(b["top_margin"]) or 0) - (mm(b["bottom_margin"]) or 0)
        around = circ - hw - (2 * (mm(h["handle_clearance"]) or 0) if hw else 0)
        return h, s, min(around, mm(h["max_band_width"]) or 1e9), min(up, mm(h["max_band_height"]) or 1e9), circ
    return None


def options(size):
    """Footprints with the flag on one end, upright and turned, that the paper takes."""
    w, h = size
    return [x for x in ((w + FLAG, h, 0), (h, w + FLAG, 90)) if x[0] <= AW + 1e-6 and x[1] <= AH + 1e-6]


plan = {k: heat_and_band(b) for k, b in blanks.items()}


# ---------------------------------------------------------------- orders
def xlsx_rows(p):
    import openpyxl
    for ws in openpyxl.load_workbook(p, read_only=True, data_only=True):
        for n, r in enumerate(ws.iter_rows(values_only=True), 1):
            yield ws.title, n, r


def csv_rows(p):
    with open(p, newline="", encoding="utf-8-sig") as f:
        for n, r in enumerate(csv.reader(f), 1):
            yield "", n, r


def read(p):
    cols = last = None
    for sheet, n, r in (xlsx_rows if p.suffix == ".xlsx" else csv_rows)(p):
        if sheet != last:
            cols, last = None, sheet
        if cols is None:
            cols = [(headers.get(str(x or "").strip().lower()), i) for i, x in enumerate(r)]
            continue
        yield p.name, n, r, {f: r[i] for f, i in cols if f and i < len(r)}


def day(v):
    return v.date() if isinstance(v, dt.datetime) else dt.date.fromisoformat(str(v))


dims = {}


def art_dims(f):
    if f not in dims:
        p = (ART / f).resolve()
        dims[f] = None
        if p.is_relative_to(ART.resolve()) and p.is_file():
            from PIL import Image
            with Image.open(p) as im: dims[f] = (*im.size, im.mode, im.format)
    return dims[f]


lines, held, status, empty, nread = [], [], [], 0, 0
for p in sorted(SHOP_DIR.joinpath("inbox").glob("*.*")):
    for file, row, raw, r in read(p):
        nread += 1
        if not any(x not in (None, "") for x in raw):
            empty += 1
            continue

        def hold(col, message, cure):
            held.append([*raw, message, cure, f"{file} {row}"])
            status.append([file, row, *raw, "held: " + message])

        sku, d, q, tx = alias.get(str(r.get("sku") or "").strip().lower()), designs.get(str(r.get("design") or "").strip()), str(r.get("quantity") or "").strip(), {}
        if not sku: hold("sku", f"No blank {r.get('sku')!r}.", "Add it to blanks.csv or mend the SKU.")
        elif not plan[sku]: hold("sku", f"No heat source takes {sku}.", "Add a press setting.")
        elif not options(plan[sku][2:4]): hold("sku", f"{sku} is larger than the paper.", "Use larger paper.")
        elif not d: hold("design", f"No design {r.get('design')!r}.", "Add it to designs.csv.")
        elif not art_dims(d["artwork"]): hold("design", f"No file {d['artwork']}.", "Put it into the artwork folder.")
        elif not q.isdigit() or not 1 <= int(q) <= int(shop["max_quantity"]): hold("quantity", f"Quantity {q!r}.", "Write a whole number.")
        else:
            for t in texts.get(d["design"], ()):
                v = str(r.get("text:" + t["field"]) or "").strip()
                if not v and t["required"] == "yes": hold(t["field"], f"{t['field']} is empty.", "Fill it in."); break
                if len(v) > int(t["max_chars"]): hold(t["field"], f"{t['field']} has {len(v)} characters.", f"At most {t['max_chars']}."); break
                tx[t["field"]] = v
            else:
                lines.append((day(r["ship_by"]), str(r["order"]), file, row, sku, d["design"], int(q), tx, r))
                status.append([file, row, *raw, "made"])

# ---------------------------------------------------------------- units, sheets, loads
units, seen = [], collections.Counter()
lines.sort(key=lambda l: l[:4])
for ship, order, file, row, sku, des, q, tx, r in lines:
    seen[order] += 1
    h, s, w, u, _ = plan[sku]
    for c in range(1, q + 1):
        units.append({"id": f"{order}-{seen[order]}-{c}", "order": order, "piece": c, "from": {"file": file, "row": row}, "blank": sku, "design": des, "texts": tx, "heat_source": h["id"],
                      "band_width_mm": round(w, 3), "band_height_mm": round(u, 3)})
classes = collections.defaultdict(collections.deque)  # (w, h) -> units in order of dispatch
for u in units:
    classes[u["band_width_mm"], u["band_height_mm"]].append(u)


def fill(counts, order):
    """One sheet from the size classes still wanted, skyline bottom-left: [(size, x, y, rotation)]."""
    sky, got, counts = [(0.0, 0.0, AW + GAP)], [], dict(counts)
    while True:
        best = None
        for size in order:
            if not counts[size]: continue
            for w, h, rot in OPT[size]:
                W, H = w + GAP, h + GAP
                for i, (x, y, sw) in enumerate(sky):
                    if x + W > AW + GAP + 1e-6: break
                    top, j, x2 = y, i, x
                    while x2 < x + W - 1e-6:
                        top, x2, j = max(top, sky[j][1]), sky[j][0] + sky[j][2], j + 1
                    if top + H > AH + GAP + 1e-6: continue
                    waste = sum((top - sky[k][1]) * (min(sky[k][0] + sky[k][2], x + W) - sky[k][0]) for k in range(i, j))
                    key = (-(w * h) if not got else 0, top + H, waste, -w * h, x)
                    if best is None or key < best[0]: best = (key, size, x, top, W, H, rot)
        if not best: return got
        _, size, x, y, W, H, rot = best
        counts[size] -= 1
        got.append((size, x, y, rot))
        new = [(x, y + H, W)]
        for s in sky:
            if s[0] + s[2] <= x + 1e-6 or s[0] >= x + W - 1e-6: new.append(s); continue
            if s[0] < x - 1e-6: new.append((s[0], s[1], x - s[0]))
            if s[0] + s[2] > x + W + 1e-6: new.append((x + W, s[1], s[0] + s[2] - x - W))
        sky = sorted(new)


OPT = {s: options(s) for s in classes}
order = sorted(classes, key=lambda s: (-s[0] * s[1], s))
left, sheets = {s: len(classes[s]) for s in order}, []
while any(left.values()):
    lay = fill(left, [s for s in order if left[s]])
    need = collections.Counter(p[0] for p in lay)
    for _ in range(min(left[s] // n for s, n in need.items())):  # the same sheet while the counts allow
        sheets.append([(classes[s].popleft(), x, y, rot) for s, x, y, rot in lay])
    left = {s: len(classes[s]) for s in order}
for n, sh in enumerate(sheets):
    for u, x, y, rot in sh:
        w, h = u["band_width_mm"], u["band_height_mm"]
        u.update(sheet=n, w_mm=h if rot else w, h_mm=w if rot else h, x_mm=round(ML + x, 3), y_mm=round(MB + y, 3), rotation=rot, mirrored=True)
full, loads = collections.defaultdict(list), []
for u in units:
    h = plan[u["blank"]][0]
    full[h["id"], u["blank"] if h["pieces_per_load"] == "1" else blanks[u["blank"]]["material"]].append(u)
for (hid, _), us in sorted(full.items()):
    cap = int(plan[us[0]["blank"]][0]["pieces_per_load"])
    for i in range(0, len(us), cap):
        loads.append((hid, us[i:i + cap]))
        for u in us[i:i + cap]: u["load"] = len(loads)

# ---------------------------------------------------------------- pdf
from reportlab import rl_config
rl_config.useA85, rl_config.invariant = 0, 1
from reportlab.pdfbase import pdfdoc, pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas
from PIL import Image
pdfmetrics.registerFont(TTFont("T", "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"))


class PngImage(pdfdoc.PDFImageXObject):
    """PNG into PDF: the file's own data where PDF can carry it, else pixels and a soft mask."""
    def __init__(self, name, path):
        super().__init__(name)
        self._filters, self.parms, self._smask, self.palette = ("FlateDecode",), None, None, None
        b = path.read_bytes()
        w, h, bits, kind, _, _, lace = struct.unpack(">IIBBBBB", b[16:29])
        i, idat, trns = 8, [], False
        while i < len(b):
            n, t = struct.unpack(">I4s", b[i:i + 8])
            if t == b"IDAT": idat.append(b[i + 8:i + 8 + n])
            elif t == b"PLTE": self.palette = b[i + 8:i + 8 + n]
            elif t == b"tRNS": trns = True
            i += n + 12
        self.width, self.height = w, h
        if kind in (0, 2, 3) and not lace and not trns and bits <= 8:
            self.bitsPerComponent, self.colors, self.streamContent, self.parms = bits, 3 if kind == 2 else 1, b"".join(idat), True
            self.colorSpace = {0: "DeviceGray", 2: "DeviceRGB", 3: "Indexed"}[kind]
        else:
            im = Image.open(io.BytesIO(b)).convert("RGBA")
            self.bitsPerComponent, self.colorSpace, self.streamContent = 8, "DeviceRGB", zlib.compress(im.convert("RGB").tobytes(), 6)
            m = self._smask = pdfdoc.PDFImageXObject(name + "m")
            m.width, m.height, m.bitsPerComponent, m.colorSpace, m._filters = w, h, 8, "DeviceGray", ("FlateDecode",)
            m.streamContent = zlib.compress(im.getchannel("A").tobytes(), 6)

    def format(self, document):
        S, N = pdfdoc.PDFStream(content=self.streamContent), pdfdoc.PDFName
        D = S.dictionary
        D["Type"], D["Subtype"], D["Width"], D["Height"], D["BitsPerComponent"] = N("XObject"), N("Image"), self.width, self.height, self.bitsPerComponent
        D["ColorSpace"] = pdfdoc.PDFArray([N("Indexed"), N("DeviceRGB"), len(self.palette) // 3 - 1, pdfdoc.PDFString(self.palette, enc="raw")]) if self.colorSpace == "Indexed" else N(self.colorSpace)
        D["Filter"] = pdfdoc.PDFArray([N("FlateDecode")])
        if self.parms: D["DecodeParms"] = pdfdoc.PDFArray([pdfdoc.PDFDictionary({"Predictor": 15, "Colors": self.colors, "BitsPerComponent": self.bitsPerComponent, "Columns": self.width})])
        if getattr(self, "smask", None): D["SMask"] = self.smask
        return S.format(document)


def placed(d, size, w, h, circ):
    """Picture boxes on the band in mm, with the box each is clipped to."""
    pw, ph = size[:2]
    if d["placement"] in ("", "all round"): boxes = [(0, 0, w, h)]
    else:
        side = min(h, w / 2)
        at = {"opposite": [w / 2], "handle-left": [w / 2 - circ / 4], "handle-right": [w / 2 + circ / 4], "two-sided": [w / 2 - circ / 4, w / 2 + circ / 4]}[d["placement"]]
        boxes = [(min(max(c - side / 2, 0), w - side), (h - side) / 2, side, side) for c in at]
    fx, fy = (float(x.rstrip("%")) / 100 for x in (d["crop_centre"] or "50% 50%").split())
    for x, y, rw, rh in boxes:
        if d["fit"] == "fill": yield (x, y, rw, rh), (x, y, rw, rh); continue
        s = (max if d["fit"] == "cover" else min)(rw / pw, rh / ph)
        yield (x + (rw - pw * s) * fx, y + (rh - ph * s) * (1 - fy), pw * s, ph * s), (x, y, rw, rh)


OUT.joinpath("sheets").mkdir(parents=True, exist_ok=True)
names = [f for f in sorted({designs[u["design"]]["artwork"] for u in units}) if dims[f][3] == "PNG"]
pngs = dict(zip(names, ThreadPoolExecutor(2).map(lambda f: PngImage("i" + f, ART / f), names)))
c = Canvas(str(OUT / "sheets" / "letter-01.pdf"), pagesize=(PW * MM, PH * MM), pageCompression=1)


def image(f, x, y, w, h):
    if f not in pngs:
        c.drawImage(str(ART / f), x, y, w, h, mask="auto")
        return
    o = pngs[f]
    if not c.hasForm("i" + f):
        ref = c._doc.getXObjectName(o.name)
        c._setXObjects(o); c._doc.Reference(o, ref); c._doc.addForm(o.name, o)
        if o._smask:
            c._setXObjects(o._smask)
            o.smask = c._doc.Reference(o._smask, c._doc.getXObjectName(o._smask.name))
    c.saveState(); c.transform(w, 0, 0, h, x, y); c.doForm("i" + f); c.restoreState()


form_of, ppi = {}, {}


def form(des, w, h, circ):
    """One form for a design on a band, drawn as seen on the blank; reportlab wants forms between pages."""
    if (des, w, h) not in form_of:
        form_of[des, w, h] = n = f"f{len(form_of)}"
        d, ppi[n] = designs[des], 1e9
        c.beginForm(n, 0, 0, w * MM, h * MM)
        for (x, y, iw, ih), (rx, ry, rw, rh) in placed(d, dims[d["artwork"]], w, h, circ):
            c.saveState()
            p = c.beginPath(); p.rect(rx * MM, ry * MM, rw * MM, rh * MM); c.clipPath(p, stroke=0, fill=0)
            image(d["artwork"], x * MM, y * MM, iw * MM, ih * MM)
            c.restoreState()
            ppi[n] = min(ppi[n], dims[d["artwork"]][0] / (iw / 25.4))
        c.endForm()
    return form_of[des, w, h]


for u in units:
    u["ppi"] = round(ppi[form(u["design"], u["band_width_mm"], u["band_height_mm"], plan[u["blank"]][4])])
fit = {}


def text_size(v, t, w, h):
    if (v, t["design"], w) not in fit:
        fit[v, t["design"], w] = max(mm(t["min_size"]) * MM, min(mm(t["max_size"]) * MM, h * .8, w / max(pdfmetrics.stringWidth(v, "T", 1), 1e-6)))
    return fit[v, t["design"], w]


for n, sh in enumerate(sheets):
    for u, _, _, rot in sh:
        w, h, x, y = u["band_width_mm"] * MM, u["band_height_mm"] * MM, u["x_mm"] * MM, u["y_mm"] * MM
        c.saveState()
        c.transform(*((-1, 0, 0, 1, x + w, y) if rot == 0 else (0, -1, -1, 0, x + h, y + w)))  # mirrored, then turned
        c.doForm(form_of[u["design"], u["band_width_mm"], u["band_height_mm"]])
        for t in texts.get(u["design"], ()):
            if v := u["texts"].get(t["field"]):
                bx, by, bw, bh = (float(t[k].rstrip(" %")) / 100 for k in ("x", "y", "width", "height"))
                size = text_size(v, t, bw * w, bh * h)
                c.setFillColor(t["colour"]); c.setFont("T", size)
                c.drawCentredString((bx + bw / 2) * w, (1 - by - bh / 2) * h - size * .35, v)
        c.restoreState()
        c.saveState()  # the flag, readable on the sheet
        s = plan[u["blank"]][1]
        c.translate(*((x + w + 3 * MM, y + h / 2) if rot == 0 else (x + h / 2 - 10 * MM, y + w + 10 * MM)))
        c.setFont("Helvetica", 6)
        for k, v in enumerate((u["id"], f"{u['blank']} {u['design']}", f"{u['heat_source']} {s['temperature']} {s['time']}", f"load {u['load']}")):
            c.drawString(0, -7 * k, v)
        c.restoreState()
    c.setFont("Helvetica", 6)
    c.drawRightString((PW - MR) * MM, (MB + .5) * MM, f"sheet {n + 1}")
    c.showPage()
c.save()


class Lister:
    def __init__(self, name, title, heads, xs):
        self.c, self.title, self.heads, self.xs, self.y, self.n = Canvas(str(OUT / name), pagesize=(612, 792), pageCompression=1), title, heads, xs, 0, 0

    def row(self, cells, bold=False):
        if self.y < 48:
            if self.n: self.c.showPage()
            self.n, self.y = self.n + 1, 730
            self.c.setFont("Helvetica-Bold", 12); self.c.drawString(36, 750, f"{self.title} - page {self.n}")
            self.c.setFont("Helvetica-Bold", 8)
            for x, v in zip(self.xs, self.heads): self.c.drawString(x, self.y, v)
            self.y -= 14
        self.c.setFont("Helvetica-Bold" if bold else "Helvetica", 8)
        for x, v in zip(self.xs, cells):
            if v: self.c.drawString(x, self.y, v)
        self.c.rect(576, self.y - 1, 8, 8)
        self.c.setLineWidth(.25); self.c.line(36, self.y - 3, 590, self.y - 3)
        self.y -= 14


pick = Lister("pick-list.pdf", "Pick list", ["Shelf", "Blank", "Name", "Count"], [36, 90, 180, 480])
for sku, n in sorted(collections.Counter(u["blank"] for u in units).items(), key=lambda t: blanks[t[0]]["shelf"]):
    pick.row([blanks[sku]["shelf"], sku, blanks[sku]["name"], str(n)])
pick.c.save()
chk = Lister("press-checklist.pdf", "Press checklist", ["Load", "Unit", "Blank", "Design", "Temp", "Time", "Pressure", "Gloves"], [36, 66, 140, 200, 285, 325, 370, 420])
for n, (hid, us) in enumerate(loads, 1):
    for k, u in enumerate(us):
        s = plan[u["blank"]][1]
        chk.row([f"{n}" if k == 0 else "", u["id"], u["blank"], u["design"], s["temperature"], s["time"], s["pressure"], s["gloves"]], bold=k == 0)
chk.c.save()
by = collections.OrderedDict()
for l in lines: by.setdefault(l[1], []).append(l)
c = Canvas(str(OUT / "packing-slips.pdf"), pagesize=(612, 396), pageCompression=1)
for o, ls in by.items():
    c.setFont("T", 12); c.drawString(36, 350, f"Order {o}")
    c.setFont("T", 9); c.drawRightString(576, 350, f"ship by {ls[0][0].isoformat()}")
    y = 330
    for f in ("ship_to", "street", "city", "region", "postcode", "country"):
        if ls[0][8].get(f): c.drawString(36, y, str(ls[0][8][f])); y -= 12
    y -= 12
    for l in ls:
        c.drawString(36, y, f"{l[6]} x {blanks[l[4]]['name']}"); c.drawString(240, y, l[5]); c.drawString(320, y, ", ".join(l[7].values())); c.rect(560, y - 1, 8, 8)
        y -= 14
    if ls[0][8].get("gift_message"): c.drawString(36, y - 8, str(ls[0][8]["gift_message"]))
    c.showPage()
c.save()

# ---------------------------------------------------------------- spreadsheets and run.json
import openpyxl
for name, rows in (("held", held), ("orders", status)):
    wb = openpyxl.Workbook(write_only=True)
    ws = wb.create_sheet("Orders")
    for r in rows: ws.append(r)
    wb.save(OUT / f"{name}.xlsx")
assert sum(l[6] for l in lines) == len(units) and nread == empty + len(lines) + len(held)
OUT.joinpath("run.json").write_text(json.dumps({"schema": 1, "rows": {"read": nread, "made": len(lines), "held": len(held), "empty": empty},
    "sheets": [{"file": "sheets/letter-01.pdf", "page": n + 1, "paper": "letter", "width_mm": PW, "height_mm": PH} for n in range(len(sheets))], "units": units}), encoding="utf-8")
print(f"rows {nread} units {len(units)} held {len(held)} sheets {len(sheets)}")

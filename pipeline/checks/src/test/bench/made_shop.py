#!/usr/bin/python3
"""A synthetic shop for the speed checks, always the same for the same numbers: rules, inbox/artwork, inbox/orders.xlsx and inbox/site-b.csv.
usage: made_shop.py OUT --lines N --art M [--seed S] [--clean]      (--clean: no faulty rows)
"""
import argparse, csv, datetime as dt, pathlib, random, sys, zipfile
from xml.sax.saxutils import escape
import numpy as np
from PIL import Image, ImageDraw


# the columns of the design's rulebook
COLUMNS = {
    "shop": "key,value,note",
    "blanks": "sku,aliases,name,material,shape,circumference,top_diameter,bottom_diameter,height,width,outline,top_margin,bottom_margin,side_margin,handle_width,wrap_overlap,bleed_top,bleed_bottom,base_colour,hot_colour,finish,backing,parts,heat_sources,oven_places,shelf,cost,care,evidence,note",
    "heat-sources": "id,name,kind,machines,handle_clearance,min_diameter,max_diameter,max_taper,max_band_height,max_band_width,pieces_per_load,positions,turn,covering,watts,circuit,warm_up,loading,unloading,note",
    "press-settings": "material,heat_kind,sku,temperature,time,pressure,allowed,gloves,peel,rest,cautions,evidence,note",
    "papers": "id,name,width,height,margin_top,margin_right,margin_bottom,margin_left,cost,note",
    "printers": "id,papers,mirror,colour,icc_profile,intent,scale_x,scale_y,note",
    "designs": "design,artwork,artwork_2,placement,fit,crop_centre,background,note",
    "texts": "design,field,side,anchor,x,y,width,height,lines,font,max_size,min_size,colour,align,letter_case,max_chars,required,default,note",
    "fonts": "id,file,note",
    "products": "site,product,variation,blank,design,count,texts,note",
    "sites": "site,files,header_row,date_order,decimal,continued,skip_status,text_separator,empty_words,approval,note",
    "order-columns": "site,field,header,note",
    "stock": "sku,counted_on,count,reorder_at,pack_size,note",
    "circuits": "id,volts,amperes,note",
}
COLUMNS = {k: v.split(",") for k, v in COLUMNS.items()}


def table(dst, name, rows):
    """Writes rules/tables-style NAME.csv from dicts; an unknown key is our own mistake."""
    dst = pathlib.Path(dst)
    dst.mkdir(parents=True, exist_ok=True)
    for r in rows:
        assert set(r) <= set(COLUMNS[name]), (name, set(r) - set(COLUMNS[name]))
    with open(dst / f"{name}.csv", "w", newline="", encoding="utf-8") as f:
        w = csv.DictWriter(f, COLUMNS[name], restval="")
        w.writeheader()
        w.writerows(rows)


CYL = dict(material="ceramic", shape="cylinder", base_colour="#FFFFFF", finish="gloss", backing="opaque", evidence="measured", top_margin="3 mm", bottom_margin="3 mm")
CONE = dict(CYL, shape="cone", wrap_overlap="0", bleed_top="0", bleed_bottom="0")
FLAT = dict(CYL, shape="flat", outline="rectangle", top_margin="0", bottom_margin="0", side_margin="0", handle_width="0", wrap_overlap="0", bleed_top="0", bleed_bottom="0")
# how often, then the blank; the second alias is the name that site B uses
BLANKS = [
    (30, dict(CYL, sku="MUG-11-W", aliases="eleven white|M11W", name="White mug 11", circumference="10 3/8 in", height="3.75 in", handle_width="1 1/8 in", shelf="A1", cost="1.90")),
    (12, dict(CYL, sku="MUG-11-B", aliases="eleven blue handle|M11B", name="Mug 11 blue handle", circumference="10 3/8 in", height="3.75 in", handle_width="1 1/8 in", shelf="A2", cost="2.20")),
    (14, dict(CYL, sku="MUG-15-W", aliases="fifteen white|M15W", name="White mug 15", top_diameter="86 mm", height="118 mm", top_margin="4 mm", bottom_margin="4 mm", handle_width="26 mm", shelf="A3", cost="2.60")),
    (5, dict(CYL, sku="MUG-06-W", aliases="six white|M06W", name="Small mug 6", circumference="20.4 cm", height="80 mm", handle_width="20 mm", shelf="A4", cost="1.70")),
    (4, dict(CYL, sku="STEIN-FG", aliases="frosted stein|SFG", name="Frosted glass stein", material="glass", circumference="9.5 in", height="5.5 in", top_margin="0.5 in", bottom_margin="0.5 in", handle_width="1.25 in",
             base_colour="#F0F0F0", finish="frosted", backing="clear", shelf="B1", cost="3.90")),
    (8, dict(CYL, sku="CAMP-12", aliases="camp cup|CC12", name="Enamel camp cup", material="metal", top_diameter="88 mm", height="80 mm", top_margin="5 mm", bottom_margin="4 mm", handle_width="24 mm", shelf="B2", cost="3.10")),
    (4, dict(CYL, sku="MUG-11-C", aliases="colour changing|M11C", name="Colour-changing mug 11", circumference="26.0 cm", height="95 mm", bottom_margin="4 mm", handle_width="25 mm", base_colour="#202020", hot_colour="#FFFFFF",
             finish="colour-changing", shelf="A5", cost="3.30")),
    (6, dict(CYL, sku="TUM-20", aliases="tumbler twenty|T20", name="Straight tumbler 20", material="metal", circumference="230 mm", height="205 mm", top_margin="6 mm", bottom_margin="6 mm", handle_width="0", wrap_overlap="2 mm",
             bleed_top="0", bleed_bottom="0", shelf="C1", cost="5.20")),
    (4, dict(CONE, sku="LATTE-12", aliases="latte cone|L12", name="Latte mug 12", top_diameter="90 mm", bottom_diameter="68 mm", height="104 mm", top_margin="5 mm", bottom_margin="6 mm", handle_width="24 mm", shelf="A6", cost="2.90")),
    (3, dict(CONE, sku="LATTE-17", aliases="latte large|L17", name="Latte mug 17", top_diameter="86 mm", bottom_diameter="66 mm", height="110 mm", top_margin="6 mm", bottom_margin="8 mm", handle_width="26 mm", shelf="A7", cost="3.40")),
    (7, dict(FLAT, sku="COAST-S", aliases="square coaster|CS", name="Square coaster", material="polymer", width="95 mm", height="95 mm", shelf="D1", cost="0.60")),
    (3, dict(FLAT, sku="COAST-T", aliases="tile|CT", name="Small tile", width="108 mm", height="108 mm", shelf="D2", cost="0.90"))]
SOURCES = [
    dict(id="mug-press", name="Mug press", kind="mug press", machines="2", handle_clearance="0.5 in", min_diameter="60 mm", max_diameter="95 mm", max_taper="0.6", max_band_height="4.75 in", max_band_width="9.5 in",
         pieces_per_load="1", positions="1", covering="protective paper", watts="400", warm_up="5 min", loading="1 min", unloading="1 min"),
    dict(id="oven", name="Convection oven", kind="oven", machines="1", handle_clearance="0", min_diameter="0", max_diameter="150 mm", pieces_per_load="6", positions="1", covering="shrink sleeve", watts="1600",
         warm_up="15 min", loading="2 min", unloading="2 min"),
    dict(id="flat-press", name="Flat press", kind="flat press", machines="1", handle_clearance="0", max_band_height="290 mm", max_band_width="380 mm", pieces_per_load="4", positions="1", covering="protective paper",
         watts="1400", warm_up="10 min", loading="1 min", unloading="1 min")]
SETTINGS = [dict(zip(("material", "heat_kind", "sku", "temperature", "time", "pressure", "allowed", "gloves", "peel", "evidence"), r)) for r in [
    ("ceramic", "mug press", "", "190 C", "180 s", "medium", "yes", "no", "hot", "common practice"), ("ceramic", "oven", "", "190 C", "12 min", "sleeve", "yes", "yes", "hot", "common practice"),
    ("ceramic", "flat press", "", "200 C", "240 s", "light", "yes", "no", "hot", "common practice"), ("ceramic", "mug press", "MUG-11-C", "180 C", "150 s", "light", "yes", "no", "hot", "supplier listing"),
    ("glass", "mug press", "", "", "", "", "no", "yes", "", "common practice"), ("glass", "oven", "", "180 C", "12 min", "sleeve", "yes", "yes", "hot", "common practice"),
    ("metal", "mug press", "", "", "", "", "no", "yes", "", "common practice"), ("metal", "oven", "", "190 C", "10 min", "sleeve", "yes", "yes", "hot", "common practice"),
    ("polymer", "flat press", "", "190 C", "60 s", "light", "yes", "no", "hot", "common practice"), ("polymer", "oven", "", "", "", "", "no", "yes", "", "common practice")]]
SHOP = dict(unit="mm", temperature_unit="C", paper="letter", printer="desk", people="2", day_starts="09:00", ppi_note="1", ppi_hold="1", crop_note="100 %", crop_hold="100 %", stretch_note="9999 %", stretch_hold="9999 %",
            contrast_note="1.0", contrast_hold="1.0", trim_border="2 mm", trim_gap="4 mm", flag_depth="14 mm", flag_height="30 mm", cutting="scissors", stock="ignore", incomplete_order="make", artwork_by_name="no", max_quantity="500")
FIELDS = "order order_date ship_by sku design quantity text:name ship_to street city region postcode country gift_message".split()
HEADS_X = "Order No|Order Date|Ship By|Item SKU|Design|Qty|Personalisation|Ship Name|Street|City|Region|Postcode|Country|Gift Message".split("|")
HEADS_C = "order_id created dispatch_before product_code artwork_ref units custom_text recipient street_line town area post_code country_code message".split()


def rules(dst, designs, texts):
    table(dst, "shop", [dict(key=k, value=v) for k, v in SHOP.items()])
    table(dst, "blanks", [b for _, b in BLANKS])
    table(dst, "heat-sources", SOURCES)
    table(dst, "press-settings", SETTINGS)
    table(dst, "papers", [dict(id="letter", name="Letter", width="8.5 in", height="11 in", margin_top="3 mm", margin_right="3 mm", margin_bottom="3 mm", margin_left="3 mm", cost="0.10")])
    table(dst, "printers", [dict(id="desk", papers="letter", mirror="file", colour="driver", scale_x="1", scale_y="1")])
    table(dst, "order-columns", [dict(field=f, header=h) for hs in (HEADS_X, HEADS_C) for f, h in zip(FIELDS, hs)])
    table(dst, "designs", designs)
    table(dst, "texts", texts)
    for name in ("stock", "products", "sites"):
        table(dst, name, [])


def artwork(dst, n, rnd, rng):
    """Photographs as JPEG (one CMYK, one grey), drawings as PNG with alpha or palette. Returns designs and texts."""
    grain = rng.normal(0, 6, (1300, 2700, 1)).astype(np.float32)

    def photo(w=2600, h=1200):
        def layer(k, lo, hi): return np.asarray(Image.fromarray(rng.integers(lo, hi, (k, k * 2 + 1, 3), dtype=np.uint8)).resize((w, h), Image.BICUBIC), dtype=np.float32)
        y, x = rng.integers(0, 1300 - h), rng.integers(0, 2700 - w)
        img = Image.fromarray(np.clip(layer(6, 0, 255) * .7 + layer(60, 0, 255) * .2 + layer(240, 0, 255) * .1 + grain[y:y + h, x:x + w], 0, 255).astype(np.uint8))
        d = ImageDraw.Draw(img)
        d.rectangle([0, 0, w // 8, h // 8], fill=(220, 20, 20))
        d.rectangle([w - w // 8, h - h // 8, w, h], fill=(20, 20, 220))
        return img

    def drawing(w, h, clear):
        img = Image.new("RGBA", (w, h), (0, 0, 0, 0) if clear else (245, 240, 230, 255))
        d = ImageDraw.Draw(img)
        for _ in range(120):
            x, y, r = rnd.randrange(w), rnd.randrange(h), rnd.randrange(10, h // 4)
            c = tuple(rnd.randrange(256) for _ in range(3)) + (rnd.choice((255, 255, 160)) if clear else 255,)
            rnd.choice((d.ellipse, d.rectangle))([x - r, y - r // 2, x + r, y + r // 2], fill=c, outline=(20, 20, 20, 255), width=5)
        return img.resize((w // 2, h // 2), Image.LANCZOS).resize((w, h), Image.BICUBIC) if clear else img.convert("RGB").quantize(64)

    designs, texts = [], []
    for i in range(n):
        kind = "cmyk" if i == 3 else "grey" if i == 4 else ("jpeg", "jpeg", "alpha", "jpeg", "palette", "jpeg", "jpeg", "alpha", "jpeg", "palette")[i % 10]
        file = f"art-{i:04}." + ("png" if kind in ("alpha", "palette") else "jpg")
        if kind == "alpha": drawing(2000, 1000, True).save(dst / file, compress_level=6)
        elif kind == "palette": drawing(2400, 1100, False).save(dst / file, compress_level=6)
        else: photo().convert({"cmyk": "CMYK", "grey": "L"}.get(kind, "RGB")).save(dst / file, quality=92)
        place = rnd.choices(("all round", "opposite", "handle-left", "handle-right", "two-sided"), (70, 10, 5, 5, 10))[0] if kind == "alpha" else "all round"
        designs.append(dict(design=f"d{i:04}", artwork=file, placement=place, fit="contain" if kind == "alpha" else rnd.choice(("cover", "cover", "fill"))))
        if i % 5 < 2:
            texts.append(dict(design=f"d{i:04}", field="name", anchor="band", x="10 %", y="72 %", width="80 %", height="20 %", lines="1", max_size="36 pt", min_size="10 pt", colour="#1A1A60", align="centre", max_chars="20", required="yes"))
    return designs, texts


def order_rows(n, rnd, designs, texts, clean):
    named, plain = {t["design"] for t in texts}, [d for d in designs if d["placement"] == "all round"]
    first, last = "Ba De Fi Go Hu Ja Ke Li Mo Nu Ra Se Ti Vo Wu".split(), "bel dan fin gor hal jin kel lor mir nel ron sil tav ven wex".split()
    street = "Alder Birch Cedar Elm Fern Gorse Hazel Larch Maple Rowan Sedge Willow".split()
    town = [x + y for x in "North South East West Upper Lower Far Near".split() for y in "by ham ford mere wick field".split()]
    word = lambda: rnd.choice(first) + rnd.choice(last) + rnd.choice(("", "a", "o", "i", "e"))
    made, no = 0, 1000
    while made < n:
        no += 1
        day = dt.date(2026, 2, 27) + dt.timedelta(rnd.randrange(3))
        ship = day + dt.timedelta(rnd.randrange(3, 9))
        who = [f"{word()} {word()}", f"{rnd.randrange(1, 240)} {rnd.choice(street)} {rnd.choice(('Row', 'Lane', 'Street', 'Close'))}", rnd.choice(town), rnd.choice(("Northshire", "Southshire", "Midland")),
               f"{rnd.randrange(10000, 99999)}", "XX", "With love from all of us" if rnd.random() < .08 else ""]
        for _ in range(rnd.choices((1, 2, 3), (70, 20, 10))[0]):
            if made == n: return
            b = rnd.choices([b for _, b in BLANKS], [k for k, _ in BLANKS])[0]
            of = designs if b["shape"] == "cylinder" else plain
            d = of[min(int(rnd.paretovariate(.6)) - 1, 10 ** 9) % len(of)] if rnd.random() < .5 else rnd.choice(of)
            sku, design, q, name = b["sku"], d["design"], rnd.choices((1, 2, 3, 4), (70, 18, 6, 6))[0], word() if d["design"] in named else ""
            if not clean and made % 50 == 49:
                f = made // 50 % 5
                if f == 0: sku = "MUG-XX"
                elif f == 1: design = "d-none"
                elif f == 2: q = "two"
                elif f == 3: name = "x" * 40 if name else name
                else: name = ""
            made += 1
            yield no, day, ship, sku, b["aliases"].split("|")[1], design, q, name, who


def xlsx(path, rows):
    """A plain workbook, written by hand: fast, and the same bytes every time."""
    shared, texts, out, total = {}, [], [], 0

    def put(r, vals):
        nonlocal total
        cells = []
        for k, v in zip("ABCDEFGHIJKLMN", vals):
            if v == "" or v is None: continue
            if isinstance(v, dt.date): cells.append(f'<c r="{k}{r}" s="1"><v>{(v - dt.date(1899, 12, 30)).days}</v></c>')
            elif isinstance(v, int): cells.append(f'<c r="{k}{r}"><v>{v}</v></c>')
            else:
                if v not in shared:
                    shared[v] = len(texts)
                    texts.append(v)
                total += 1
                cells.append(f'<c r="{k}{r}" t="s"><v>{shared[v]}</v></c>')
        out.append(f'<row r="{r}">{"".join(cells)}</row>')

    put(1, HEADS_X)
    r = 1
    for no, day, ship, sku, _, design, q, name, who in rows:
        r += 2 if r == 19 else 1  # one empty row
        put(r, [f"Q{no}", day, ship, sku, design, q, name, *who])
    main, head = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"', '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
    rel, pkg, ct = "http://schemas.openxmlformats.org/officeDocument/2006/relationships", "http://schemas.openxmlformats.org/package/2006/", "application/vnd.openxmlformats-officedocument.spreadsheetml."
    part = lambda p, t: f'<Override PartName="/xl/{p}.xml" ContentType="{ct}{t}+xml"/>'
    link = lambda i, t, p: f'<Relationship Id="rId{i}" Type="{rel}/{t}" Target="{p}.xml"/>'
    parts = {
        "[Content_Types].xml": f'<Types xmlns="{pkg}content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>'
                               + part("workbook", "sheet.main") + part("worksheets/sheet1", "worksheet") + part("styles", "styles") + part("sharedStrings", "sharedStrings") + "</Types>",
        "_rels/.rels": f'<Relationships xmlns="{pkg}relationships">{link(1, "officeDocument", "xl/workbook")}</Relationships>',
        "xl/workbook.xml": f'<workbook {main} xmlns:r="{rel}"><sheets><sheet name="Orders" sheetId="1" r:id="rId1"/></sheets></workbook>',
        "xl/_rels/workbook.xml.rels": f'<Relationships xmlns="{pkg}relationships">{link(1, "worksheet", "worksheets/sheet1")}{link(2, "styles", "styles")}{link(3, "sharedStrings", "sharedStrings")}</Relationships>',
        "xl/styles.xml": f'<styleSheet {main}><fonts count="1"><font><sz val="11"/><name val="Sans"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>'
                         '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="2">'
                         '<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="14" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs>'
                         '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>',
        "xl/worksheets/sheet1.xml": f'<worksheet {main}><dimension ref="A1:N{r}"/><sheetData>{"".join(out)}</sheetData></worksheet>',
        "xl/sharedStrings.xml": f'<sst {main} count="{total}" uniqueCount="{len(texts)}">' + "".join(f"<si><t>{escape(s)}</t></si>" for s in texts) + "</sst>"}
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as z:
        for n, t in parts.items():
            z.writestr(zipfile.ZipInfo(n, (2026, 1, 1, 0, 0, 0)), head + t, zipfile.ZIP_DEFLATED)


def generate(out, lines, art, seed=7, clean=False):
    out = pathlib.Path(out)
    (out / "inbox" / "artwork").mkdir(parents=True, exist_ok=True)
    rnd, rng = random.Random(seed), np.random.default_rng(seed)
    designs, texts = artwork(out / "inbox" / "artwork", art, rnd, rng)
    rules(out / "rules", designs, texts)
    rows = order_rows(lines, rnd, designs, texts, clean)
    xlsx(out / "inbox" / "orders.xlsx", [r for _, r in zip(range(lines * 3 // 4), rows)])
    with open(out / "inbox" / "site-b.csv", "w", newline="", encoding="utf-8") as f:
        w = csv.writer(f)
        w.writerow(HEADS_C)
        for no, day, ship, sku, other, design, q, name, who in rows:
            w.writerow([f"B{no}", day.isoformat(), ship.isoformat(), sku if sku == "MUG-XX" else other, design, q, name, *who])


if __name__ == "__main__":
    a = argparse.ArgumentParser()
    a.add_argument("out", type=pathlib.Path)
    a.add_argument("--lines", type=int, default=400)
    a.add_argument("--art", type=int, default=60)
    a.add_argument("--seed", type=int, default=7)
    a.add_argument("--clean", action="store_true")
    generate(**vars(a.parse_args()))

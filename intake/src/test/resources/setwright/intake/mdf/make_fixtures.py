"""Writes small measurement files by ASAM MDF 4 and, beside each, what a reader must find in it.

Independent of the reader: written from the structure that the standard publishes (blocks ID, HD, FH, DG, CG, CN, CC, TX, MD,
DT, SD, DL, HL, DZ, LD, DV, DI), with struct and zlib of the standard library only. Run it in its folder:

    python3 make_fixtures.py

The values are worked out here, in Python, from what was stored: None is a gap, "bad" counts words.
"""

import json
import math
import struct
import zlib


class Block:
    """A block: its letters, the blocks it links to (None for no link), its data."""

    def __init__(self, letters, links=(), data=b""):
        self.letters, self.links, self.data, self.at = letters, list(links), data, None

    def size(self):
        return 24 + 8 * len(self.links) + len(self.data)

    def bytes(self):
        links = b"".join(struct.pack("<q", link.at if link else 0) for link in self.links)
        return b"##" + self.letters.encode() + bytes(4) + struct.pack("<QQ", self.size(), len(self.links)) + links + self.data


def save(name, groups, tables=None, remarks=(), problem=(), version=410, unfinished=0, start=None):
    """Writes NAME.mf4 and NAME.json."""
    for one, other in zip(groups, groups[1:]):
        one.links[0] = other
    history = Block("FH", [None, text("<FHcomment><TX>made for a test</TX></FHcomment>", "MD")], struct.pack("<QhhBxxx", 0, 0, 0, 0))
    head = Block("HD", [groups[0] if groups else None, history, None, None, None, None],
                 struct.pack("<QhhBBBxdd", 1_700_000_000_000_000_000, 0, 0, 0, 0, 0, 0.0, 0.0))
    order, stack = [], [head]
    seen = set()
    while stack:
        block = stack.pop()
        if id(block) not in seen:
            seen.add(id(block))
            order.append(block)
            stack.extend(link for link in reversed(block.links) if link)
    at = 64
    for block in order:
        block.at = at
        at += (block.size() + 7) // 8 * 8
    start = start or (b"UnFinMF " if unfinished else b"MDF     ")
    number = b"%d.%02d    " % (version // 100, version % 100)
    out = start + number + b"fixture " + bytes(4) + struct.pack("<H", version) + bytes(30) + struct.pack("<HH", unfinished, 0)
    for block in order:
        out += block.bytes()
        out += bytes(-len(out) % 8)
    with open(name + ".mf4", "wb") as file:
        file.write(out)
    expected = {"problem": list(problem)} if problem else {"tables": tables, "remarks": list(remarks)}
    with open(name + ".json", "w", encoding="utf-8") as file:
        json.dump(expected, file, ensure_ascii=False, indent=None, separators=(",", ":"))
        file.write("\n")


def text(words, letters="TX"):
    return Block(letters, [], words.encode("utf-8") + b"\0")


U_LE, U_BE, S_LE, S_BE, F_LE, F_BE, LATIN, UTF8, UTF16LE, UTF16BE, BYTES = range(11)


def channel(name, kind, byte, bits, bit=0, type=0, sync=0, unit=None, cc=None, flags=0, invalid=0, inside=None, data=None):
    if isinstance(unit, str):
        unit = text(unit)
    return Block("CN", [None, inside, text(name), None, cc, data, unit, None],
                 struct.pack("<BBBBIIIIBBHdddddd", type, sync, kind, bit, byte, bits, flags, invalid, 0, 0, 0,
                             0, 0, 0, 0, 0, 0))


def chain(blocks):
    for one, other in zip(blocks, blocks[1:]):
        one.links[0] = other
    return blocks[0] if blocks else None


def group(channels, cycles, size, invalid=0, record_id=0, flags=0, master=None, name=None):
    links = [None, chain(channels), text(name) if name else None, None, None, None]
    if flags & 8:
        links.append(master)
    return Block("CG", links, struct.pack("<QQHHIII", record_id, cycles, flags, 0, 0, size, invalid))


def data_group(groups, data, id_size=0):
    return Block("DG", [None, chain(groups), data, None], struct.pack("<Bxxxxxxx", id_size))


def conversion(type, values=(), refs=(), unit=None):
    return Block("CC", [None, text(unit) if unit else None, None, None, *refs],
                 struct.pack("<BBHHHdd", type, 0, 0, len(refs), len(values), 0, 0) + struct.pack("<%dd" % len(values), *values))


def dt(data, letters="DT"):
    return Block(letters, [], data)


def dz(data, row=0, letters="DT"):
    packed = data
    if row:
        rows = len(data) // row
        packed = bytes(data[r * row + c] for c in range(row) for r in range(rows)) + data[rows * row:]
    packed = zlib.compress(packed)
    return Block("DZ", [], letters.encode() + struct.pack("<BxIQQ", 1 if row else 0, row, len(data), len(packed)) + packed)


def dl(pieces, lengths, equal=None, offset=0):
    offsets = [offset + sum(lengths[:i]) for i in range(len(lengths))]
    tail = struct.pack("<Q", equal) if equal else struct.pack("<%dQ" % len(offsets), *offsets)
    return Block("DL", [None, *pieces], struct.pack("<BxxxI", 1 if equal else 0, len(pieces)) + tail)


def cut(data, *sizes):
    pieces, at = [], 0
    for size in sizes:
        pieces.append(data[at:at + size])
        at += size
    return pieces + [data[at:]]


def column(name, unit, values, bad=0, first=None):
    return {"name": name, "unit": unit, "values": values, "bad": bad, "first": first}


def wave(i, k=1.0):
    return round(30 + 20 * math.sin(0.3 * i * k), 3)


def f32(value):
    return struct.unpack("<f", struct.pack("<f", value))[0]


def run(count):
    """A group of time, a floating-point speed, a scaled brake, a signed angle: records and what they mean."""
    data, t, v, b, a = b"", [], [], [], []
    for i in range(count):
        brake, angle = (i * 37) % 1000, (i * 53) % 400 - 200
        data += struct.pack("<dfHh", 0.01 * i, wave(i), brake, angle)
        t.append(0.01 * i)
        v.append(f32(wave(i)))
        b.append(0.1 * brake - 2.0)
        a.append(0.5 * angle + 0.0)
    columns = [column("time", "s", t), column("speed", "m/s", v), column("brake pressure", "bar", b), column("steer", "deg", a)]

    def channels():
        return [channel("time", F_LE, 0, 64, type=2, sync=1, unit="s"),
                channel("speed", F_LE, 8, 32, unit="m/s"),
                channel("brake pressure", U_LE, 12, 16, cc=conversion(1, [-2.0, 0.1], unit="bar")),
                channel("steer", S_LE, 14, 16, cc=conversion(1, [0.0, 0.5]), unit="deg")]
    return data, columns, channels


def sorted_files():
    data, columns, channels = run(40)
    tables = [{"columns": columns}]

    def one(name, block, **more):
        save(name, [data_group([group(channels(), 40, 16)], block)], tables, **more)

    one("sorted", dt(data), version=400)
    one("packed", dz(data), version=411)
    pieces = cut(data, 100, 100, 100, 100, 100, 100)
    one("list_equal", dl([dt(p) for p in pieces], [len(p) for p in pieces], equal=100))
    pieces = cut(data, 16, 7, 250, 1)
    one("list_offsets", dl([dt(p) for p in pieces], [len(p) for p in pieces]))
    pieces = cut(data, 33, 200, 150)
    first = dl([dz(p) for p in pieces[:2]], [33, 200])
    first.links[0] = dl([dz(p) for p in pieces[2:]], [len(p) for p in pieces[2:]], offset=233)
    one("list_packed", Block("HL", [first], struct.pack("<HBxxxxx", 0, 0)))
    pieces = cut(data, 160, 163)
    lists = dl([dz(p, row=16) for p in pieces], [len(p) for p in pieces])
    one("list_transposed", Block("HL", [lists], struct.pack("<HBxxxxx", 0, 1)))
    save("unfinished_counts", [data_group([group(channels(), 0, 16)], dt(data + b"part"))], tables,
         remarks=["did not finish"], unfinished=1)
    save("unfinished_lengths", [data_group([group(channels(), 0, 16)], dt(data))], unfinished=5,
         problem=["finished", "flags 5", "repair"])
    save("count_wrong", [data_group([group(channels(), 41, 16)], dt(data))], problem=["41 records", "640 bytes"])
    save("version_3", [], start=b"MDF     ", version=330, problem=["version 3.30", "MDF 4"])


def unsorted():
    for size, ids in ((1, (1, 2, 9)), (2, (300, 2, 9)), (4, (70_000, 70_001, 9)), (8, (1 << 40, 2, (1 << 63) + 5))):
        data, t, v, ft, g, count = b"", [], [], [], [], 0
        for i in range(50):
            data += ids[0].to_bytes(size, "little") + struct.pack("<IhQ", i * 20, i * 31 - 500, 0)
            t.append(i * 20 * 0.001)
            v.append(float(i * 31 - 500))
            if i % 5 == 0:
                data += ids[1].to_bytes(size, "little") + struct.pack("<fB", 0.1 * i, i % 7)
                ft.append(f32(0.1 * i))
                g.append(float(i % 7))
            if i % 9 == 0:
                words = b"lap %d" % i
                data += ids[2].to_bytes(size, "little") + struct.pack("<I", len(words)) + words
                count += 1
        words = group([], count, 0, record_id=ids[2], flags=1)
        groups = [group([channel("t", U_LE, 0, 32, type=2, sync=1, cc=conversion(1, [0.0, 0.001])),
                         channel("torque", S_LE, 4, 16, unit="Nm"),
                         channel("message", UTF8, 6, 64, type=1, data=words)], 50, 14, record_id=ids[0]),
                  group([channel("t", F_LE, 0, 32, type=2, sync=1), channel("gear", U_LE, 4, 8)], 10, 5, record_id=ids[1]),
                  words]
        tables = [{"columns": [column("t", "s", t), column("torque", "Nm", v)]},
                  {"columns": [column("t", "s", ft), column("gear", "", g)]}]
        pieces = cut(data, 101, 57)
        save("unsorted_%d" % size, [data_group(groups, dl([dt(p) for p in pieces], [len(p) for p in pieces]), size)],
             tables, remarks=["'message'"])
        if size == 2:
            for block in groups:
                block.data = block.data[:8] + bytes(8) + block.data[16:]
            save("unsorted_unfinished", [data_group(groups, dt(data + ids[0].to_bytes(2, "little") + b"par"), size)],
                 tables, remarks=["'message'", "did not finish"], unfinished=3)


def two_rates():
    one, columns, channels = run(60)
    slow, t, fuel = b"", [], []
    for i in range(6):
        slow += struct.pack("<df", 0.1 * i, 40.0 - 0.25 * i)
        t.append(0.1 * i)
        fuel.append(40.0 - 0.25 * i)
    other = group([channel("time", F_LE, 0, 64, type=2, sync=1), channel("fuel", F_LE, 8, 32, unit="l")], 6, 12)
    empty = group([channel("time", F_LE, 0, 64, type=2, sync=1), channel("never", F_LE, 8, 32)], 0, 12)
    angle, data = [], b""
    for i in range(20):
        data += struct.pack("<ff", 0.1 * i, 1.0 * i)
    turned = group([channel("crank", F_LE, 0, 32, type=2, sync=2, unit="rad"), channel("cylinder", F_LE, 4, 32)], 20, 8)
    save("two_rates", [data_group([group(channels(), 60, 16)], dt(one)), data_group([empty], None), data_group([turned], dt(data)),
                       data_group([other], dt(slow))],
         [{"columns": columns}, {"columns": [column("time", "s", t), column("fuel", "l", fuel)]}],
         remarks=["'never'", "'cylinder'"])
    turned = group([channel("crank", F_LE, 0, 32, type=2, sync=2, unit="rad"), channel("cylinder", F_LE, 4, 32)], 20, 8)
    save("angle_only", [data_group([turned], dt(data))],
         [{"columns": [column("crank", "rad", [f32(0.1 * i) for i in range(20)]), column("cylinder", "", [1.0 * i for i in range(20)])]}])


def big_endian():
    data, columns = b"", [[] for _ in range(8)]
    for i in range(25):
        packed = (i * 97) % 4096
        wide = (1 << 63) + i * 1_000_003
        data += struct.pack(">d", 0.02 * i) + struct.pack(">f", wave(i)) + struct.pack(">H", 65_000 + i) + struct.pack(">i", i * 5000 - 60_000)[1:]
        data += struct.pack(">H", 0x8000 | packed << 3 | 0b101) + struct.pack(">Q", wide) + struct.pack(">e", 0.5 * i)
        data += ((1 << 71) | (wide << 5) % (1 << 69) | 0b10110).to_bytes(9, "big")
        row = [0.02 * i, f32(wave(i)), 65_000.0 + i, i * 5000 - 60_000.0, float(packed), float(wide), 0.5 * i, float(wide)]
        for values, value in zip(columns, row):
            values.append(value)
    channels = [channel("time", F_BE, 0, 64, type=2, sync=1), channel("v", F_BE, 8, 32), channel("u16", U_BE, 12, 16),
                channel("i24", S_BE, 14, 24), channel("u12 of bit 3", U_BE, 17, 12, bit=3), channel("u64", U_BE, 19, 64),
                channel("half", F_BE, 27, 16), channel("u64 of bit 5", U_BE, 29, 64, bit=5)]
    names = ["time", "v", "u16", "i24", "u12 of bit 3", "u64", "half", "u64 of bit 5"]
    save("big_endian", [data_group([group(channels, 25, 38)], dt(data))],
         [{"columns": [column(n, "s" if n == "time" else "", v) for n, v in zip(names, columns)]}])


def bit_packed():
    fields = [(0, 1, False), (1, 3, True), (4, 12, False), (16, 20, True), (36, 33, True), (69, 7, False), (77, 64, True),
              (141, 63, False), (204, 64, False), (268, 2, True)]
    data, columns = b"", [[] for _ in fields]
    for i in range(30):
        record = 0
        for k, (at, bits, signed) in enumerate(fields):
            stored = (i * 0x9E3779B97F4A7C15 * (k + 1) + i) % (1 << bits)
            record |= stored << at
            columns[k].append(float(stored - (1 << bits) if signed and stored >> (bits - 1) else stored))
        data += struct.pack("<H", i) + record.to_bytes(34, "little")
    channels = [channel("t", U_LE, 0, 16, type=2, sync=1, unit="ms")]
    for k, (at, bits, signed) in enumerate(fields):
        channels.append(channel("f%d" % k, S_LE if signed else U_LE, 2 + at // 8, bits, bit=at % 8))
    save("bit_packed", [data_group([group(channels, 30, 36)], dt(data))],
         [{"columns": [column("t", "ms", [float(i) for i in range(30)])]
           + [column("f%d" % k, "", v) for k, v in enumerate(columns)]}])


def conversions():
    keys, values = [-5, 0, 10, 20], [100.0, 0.0, 50.0, -50.0]
    pairs = [x for pair in zip(keys, values) for x in pair]

    def interpolated(x):
        if x <= keys[0]:
            return values[0]
        for k in range(3):
            if x <= keys[k + 1]:
                return values[k] + (values[k + 1] - values[k]) * (x - keys[k]) / (keys[k + 1] - keys[k])
        return values[3]

    def nearest(x):
        return values[min(range(4), key=lambda k: (abs(x - keys[k]), k))]

    def ranged(x, closed):
        for low, high, value in ((0, 4, 1.5), (4, 8, 2.5), (-3, -3, 9.0)):
            if low <= x < high or (x == high and (closed or low == high)):
                return value
        return -1.0
    scale = conversion(1, [0.0, 0.25])
    gears = {0: None, 1: 1.0, 2: 2.5}
    data, rows = b"", []
    for i in range(40):
        x = i - 10
        data += struct.pack("<Ihd", i * 10, x, x / 2.0)
        by_range = None if 5 <= x <= 6 else 7.0 if 7 <= x <= 9 else 0.5 if -3 <= x <= 0 else None
        rows.append([i * 0.01, (x * x + 2.0 * x + 3.0) / (0.5 * x + 100.25), interpolated(x), nearest(x), ranged(x, True),
                     ranged(x / 2.0, False), gears.get(x, 0.25 * x), by_range, x / 2.0, interpolated(x / 2.0)])
    range8 = conversion(8, [5, 6, 7, 9, -3, 0], [text("many"), text(" 7 "), conversion(1, [0.5, 0.0]), None])
    channels = [channel("t", U_LE, 0, 32, type=2, sync=1, cc=conversion(1, [0.0, 0.001], unit="s")),
                channel("rational", S_LE, 4, 16, cc=conversion(2, [1, 2, 3, 0, 0.5, 100.25])),
                channel("table", S_LE, 4, 16, cc=conversion(4, pairs)),
                channel("nearest", S_LE, 4, 16, cc=conversion(5, pairs)),
                channel("range", S_LE, 4, 16, cc=conversion(6, [0, 4, 1.5, 4, 8, 2.5, -3, -3, 9.0, -1.0])),
                channel("real range", F_LE, 6, 64, cc=conversion(6, [0, 4, 1.5, 4, 8, 2.5, -3, -3, 9.0, -1.0])),
                channel("gear", S_LE, 4, 16, cc=conversion(7, [0, 1, 2], [text("N"), text("1"), text("2.5"), scale])),
                channel("level", S_LE, 4, 16, cc=range8),
                channel("same", F_LE, 6, 64, cc=conversion(0)),
                channel("real table", F_LE, 6, 64, cc=conversion(4, pairs)),
                channel("formula", S_LE, 4, 16, cc=conversion(3, [], [text("X1*2")])),
                channel("from words", S_LE, 4, 16, cc=conversion(9, [1, 0], [text("on")]))]
    names = ["t", "rational", "table", "nearest", "range", "real range", "gear", "level", "same", "real table"]
    columns = []
    for k, name in enumerate(names):
        bad, first = (1, "N") if name == "gear" else (2, "many") if name == "level" else (0, None)
        columns.append(column(name, "s" if name == "t" else "", [row[k] for row in rows], bad, first))
    save("conversions", [data_group([group(channels, 40, 14)], dt(data))], [{"columns": columns}],
         remarks=["'formula', because their values follow from formulas", "'from words'"])


def invalidation():
    data, a, b = b"", [], []
    for i in range(30):
        bits = (1 << 3 if i % 4 == 1 else 0) | (1 << 9 if i % 5 == 2 else 0)
        data += struct.pack("<fhhB", 0.01 * i, i, -i, 7) + struct.pack("<H", bits)
        a.append(None if i % 4 == 1 else float(i))
        b.append(None if i % 5 == 2 else 2.0 - i)
    channels = [channel("t", F_LE, 0, 32, type=2, sync=1), channel("a", S_LE, 4, 16, flags=2, invalid=3),
                channel("b", S_LE, 6, 16, flags=2, invalid=9, cc=conversion(1, [2.0, 1.0])),
                channel("none", U_LE, 8, 8, flags=1), channel("all", U_LE, 8, 8, invalid=3)]
    save("invalidation", [data_group([group(channels, 30, 9, invalid=2)], dz(data, row=11))],
         [{"columns": [column("t", "s", [f32(0.01 * i) for i in range(30)]), column("a", "", a), column("b", "", b),
                       column("none", "", [None] * 30), column("all", "", [7.0] * 30)]}])


def units_and_axes():
    md = text('<?xml version="1.0" encoding="utf-8"?>\n<CNunit xmlns="http://www.asam.net/mdf/v4"><TX xml:space="preserve">'
              "m/s&#178; &amp; more</TX><unit>x</unit></CNunit>", "MD")
    data = b"".join(struct.pack("<bB", i - 10, i) for i in range(20))
    channels = [channel("acceleration", S_LE, 0, 8, unit=md),
                channel("t", U_LE, 0, 0, type=3, sync=1, cc=conversion(1, [5.0, 0.02])),
                channel("count", U_LE, 0, 0, type=6, cc=conversion(1, [1.0, 1.0])),
                channel("acceleration", U_LE, 1, 8, cc=conversion(1, [0.0, 2.0], unit="Ä·°"), unit=text("", "MD")),
                channel("temp", U_LE, 1, 8, unit="°C")]
    save("virtual_axis", [data_group([group(channels, 20, 2)], dt(data))],
         [{"columns": [column("t", "s", [0.02 * i + 5.0 for i in range(20)]),
                       column("acceleration", "m/s² & more", [i - 10.0 for i in range(20)]),
                       column("count", "", [i + 1.0 for i in range(20)]),
                       column("acceleration (2)", "Ä·°", [2.0 * i for i in range(20)]),
                       column("temp", "°C", [1.0 * i for i in range(20)])]}])


def words_and_structures():
    data, latin, number = b"", [], []
    halves = [0.0, -0.0, 1.0, -2.5, 65504.0, 6e-8, 0.333251953125, math.inf, math.nan, 0.00006103515625]
    for i in range(10):
        data += struct.pack("<d", 0.1 * i) + ("é%d" % i).encode("latin-1").ljust(6, b"\0") + ("%.1f" % (1.5 * i)).encode("utf-16-le").ljust(12, b"\0")
        data += ("x" if i % 2 else "").encode("utf-8").ljust(2, b"\0") + struct.pack("<e", halves[i]) + struct.pack("<HH", i, 100 - i) + b"\xff\xfe\xfd\xfc"
        number.append(1.5 * i)
    inner = [channel("left", U_LE, 30, 16), channel("right", U_LE, 32, 16, unit="mm")]
    array = Block("CA", [None], struct.pack("<BBHiIIQ", 0, 0, 1, 0, 0, 0, 2))
    channels = [channel("t", F_LE, 0, 64, type=2, sync=1), channel("latin", LATIN, 8, 48), channel("number", UTF16LE, 14, 96),
                channel("flag", UTF8, 26, 16), channel("half", F_LE, 28, 16),
                channel("wheel", BYTES, 30, 32, inside=chain(inner)), channel("raw", BYTES, 34, 32),
                channel("field", U_LE, 34, 16, inside=array), channel("odd", F_LE, 34, 24)]
    shown = [None if math.isinf(h) or math.isnan(h) else struct.unpack("<e", struct.pack("<e", h))[0] for h in halves]
    save("words_and_structures", [data_group([group(channels, 10, 38)], dt(data))],
         [{"columns": [column("t", "s", [0.1 * i for i in range(10)]), column("latin", "", [None] * 10, 10, "é0"),
                       column("number", "", number), column("flag", "", [None] * 10, 5, "x"), column("half", "", shown),
                       column("wheel.left", "", [1.0 * i for i in range(10)]),
                       column("wheel.right", "mm", [100.0 - i for i in range(10)])]}],
         remarks=["'raw'", "'field', because they are arrays", "'odd'"])


def columns_420():
    times = b"".join(struct.pack("<d", 0.01 * i) for i in range(30))
    speed = b"".join(struct.pack("<h", 3 * i) for i in range(30))
    bits = bytes(1 if i % 6 == 5 else 0 for i in range(30))

    def ld(values, invalid=None, equal=10):
        links = [dz(v, row=len(v) // equal, letters="DV") if k % 2 else dt(v, "DV") for k, v in enumerate(values)]
        flags = 1
        if invalid:
            links += [dt(v, "DI") for v in invalid]
            flags |= 1 << 31
        return Block("LD", [None, *links], struct.pack("<IIQ", flags, len(values), equal))
    master = group([channel("t", F_LE, 0, 64, type=2, sync=1)], 30, 8)
    one = group([channel("speed", S_LE, 0, 16, flags=2, invalid=0, unit="km/h")], 30, 2, invalid=1, flags=8, master=master)
    two = group([channel("lap", U_LE, 0, 8)], 30, 1, flags=8, master=master)
    save("columns", [data_group([one], ld(cut(speed, 20, 20), cut(bits, 10, 10))), data_group([master], ld(cut(times, 80, 80))),
                     data_group([two], dt(bytes([7] * 30), "DV"))],
         [{"columns": [column("t", "s", [0.01 * i for i in range(30)]),
                       column("speed", "km/h", [None if i % 6 == 5 else 3.0 * i for i in range(30)]),
                       column("lap", "", [7.0] * 30)]}], version=420)


if __name__ == "__main__":
    for write in (sorted_files, unsorted, two_rates, big_endian, bit_packed, conversions, invalidation, units_and_axes,
                  words_and_structures, columns_420):
        write()

"""Makes the small pictures of this folder; run with Python 3.11, Pillow 9.4.0.

Every picture shows the same four fields: red, green / blue, white, upright 48 x 32 pixels. Those named for an orientation
hold the pixels turned, and say in EXIF tag 0x0112 how to turn them back.
"""
import struct
import zlib
from PIL import Image, ImageChops

W, H = 48, 32
FIELDS = [(255, 0, 0), (0, 255, 0), (0, 0, 255), (255, 255, 255)]


def field(x, y):
    return FIELDS[(x >= W // 2) + 2 * (y >= H // 2)]


upright = Image.new("RGB", (W, H))
upright.putdata([field(i % W, i // W) for i in range(W * H)])

# What a camera stores, so that the orientation named brings it upright again: the inverse of each of EXIF's eight.
stored = {1: None, 2: Image.Transpose.FLIP_LEFT_RIGHT, 3: Image.Transpose.ROTATE_180, 4: Image.Transpose.FLIP_TOP_BOTTOM,
          5: Image.Transpose.TRANSPOSE, 6: Image.Transpose.ROTATE_90, 7: Image.Transpose.TRANSVERSE,
          8: Image.Transpose.ROTATE_270}
for number, turn in stored.items():
    picture = upright if turn is None else upright.transpose(turn)
    exif = Image.Exif()
    exif[0x0112] = number
    picture.save(f"orientation-{number}.jpg", quality=95, subsampling=0, exif=exif)
    picture.save(f"orientation-{number}.png", exif=exif)
    picture.save(f"orientation-{number}.tif", tiffinfo={0x0112: number})

upright.save("plain.jpg", quality=95, subsampling=0, dpi=(600, 600))
upright.save("progressive.jpg", quality=95, subsampling=0, progressive=True)
upright.convert("L").save("grey.jpg", quality=95)
upright.save("plain.png", dpi=(600, 600))
upright.quantize(4).save("palette.png")
upright.convert("L").save("grey.png")
upright.save("plain.tif", dpi=(600, 600))
upright.save("lzw.tif", compression="tiff_lzw")
cmyk = upright.convert("CMYK")
cmyk.save("cmyk.tif")
cmyk.save("cmyk.jpg", quality=95, subsampling=0)

# YCCK (ITU-T T.872): luma and colour differences of the inks as if cyan, magenta and yellow were red, green and blue, and
# the last byte of the Adobe marker saying so. Pillow writes what it is given inverted, as Adobe does; so it is given the
# inverse.
ycc = ImageChops.invert(upright).convert("YCbCr")
inverted = Image.merge("CMYK", [*[c.point(lambda v: 255 - v) for c in ycc.split()], Image.new("L", (W, H), 0)])
inverted.save("ycck.jpg", quality=95, subsampling=0)
data = bytearray(open("ycck.jpg", "rb").read())
data[data.find(b"Adobe") + 11] = 2
open("ycck.jpg", "wb").write(data)

clear = upright.convert("RGBA")
clear.putalpha(Image.new("L", (W, H), 255))
clear.paste((255, 0, 0, 0), (0, 0, W // 2, H // 2))  # the red field is transparent
clear.save("transparent.png")


def chunk(kind, body):
    return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))


def png(name, width, height, rows):
    header = struct.pack(">IIBBBBB", width, height, 16, 2, 0, 0, 0)
    open(name, "wb").write(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + chunk(b"IDAT", zlib.compress(rows))
                           + chunk(b"IEND", b""))


sixteen = b"".join(b"\0" + b"".join(struct.pack(">HHH", *[v * 257 for v in field(x, y)]) for x in range(W)) for y in range(H))
png("sixteen.png", W, H, sixteen)
png("bomb.png", 60000, 60000, b"")  # claims 3600 million pixels in a hundred bytes

whole = open("plain.jpg", "rb").read()
open("cut-off.jpg", "wb").write(whole[: len(whole) * 2 // 3])
open("head-only.jpg", "wb").write(whole[:12])
whole = open("plain.png", "rb").read()
open("cut-off.png", "wb").write(whole[: len(whole) - 40])
whole = open("lzw.tif", "rb").read()
open("cut-off.tif", "wb").write(whole[: len(whole) // 2])
# a JPEG that claims 65000 x 65000 pixels
bomb = bytearray(open("plain.jpg", "rb").read())
at = bomb.find(b"\xff\xc0")
bomb[at + 5:at + 9] = struct.pack(">HH", 65000, 65000)
open("bomb.jpg", "wb").write(bomb)

#!/usr/bin/env python3
"""Writes a handover file from its description alone (docs/handover-format.md): no code of the product, Python's standard library only.

Ed25519 follows the algorithms of RFC 8032, section 5.1, the tree RFC 9162, section 2.1, notes the C2SP signed-note page.
Usage: build_handover.py OUT [CHECKPOINT_OUT]
"""
import base64
import hashlib
import json
import sys

P = 2**255 - 19
L = 2**252 + 27742317777372353535851937790883648493
D = -121665 * pow(121666, P - 2, P) % P
BY = 4 * pow(5, P - 2, P) % P


def recover_x(y, odd):
    xx = (y * y - 1) * pow(D * y * y + 1, P - 2, P) % P
    x = pow(xx, (P + 3) // 8, P)
    if (x * x - xx) % P:
        x = x * pow(2, (P - 1) // 4, P) % P
    return P - x if x % 2 != odd else x


BASE = (recover_x(BY, 0), BY, 1, recover_x(BY, 0) * BY % P)


def add(p, q):
    a, b = (p[1] - p[0]) * (q[1] - q[0]) % P, (p[1] + p[0]) * (q[1] + q[0]) % P
    c, d = 2 * p[3] * q[3] * D % P, 2 * p[2] * q[2] % P
    e, f, g, h = b - a, d - c, d + c, b + a
    return e * f % P, g * h % P, f * g % P, e * h % P


def times(n, p):
    q = (0, 1, 1, 0)
    while n:
        if n & 1:
            q = add(q, p)
        p = add(p, p)
        n >>= 1
    return q


def point_bytes(p):
    z = pow(p[2], P - 2, P)
    x, y = p[0] * z % P, p[1] * z % P
    return (y | (x & 1) << 255).to_bytes(32, "little")


class Key:
    def __init__(self, secret):
        h = hashlib.sha512(secret).digest()
        a = int.from_bytes(h[:32], "little")
        self.a = a & ((1 << 254) - 8) | 1 << 254
        self.prefix = h[32:]
        self.public = point_bytes(times(self.a, BASE))

    def sign(self, message):
        r = int.from_bytes(hashlib.sha512(self.prefix + message).digest(), "little") % L
        point = point_bytes(times(r, BASE))
        h = int.from_bytes(hashlib.sha512(point + self.public + message).digest(), "little") % L
        return point + ((r + h * self.a) % L).to_bytes(32, "little")


def canonical(value):
    # RFC 8785 for what entries are made of; all keys here are ASCII, so code point order is UTF-16 order
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode()


def sha(data):
    return hashlib.sha256(data).digest()


ALPHABET = "0123456789abcdefghjkmnpqrstvwxyz"


def id_of(letter, data):
    n = int.from_bytes(data, "big") << 2  # 128 bits, filled up to 26 groups of five
    return letter + "-" + "".join(ALPHABET[n >> 5 * (25 - i) & 31] for i in range(26))


def root(leaves):
    if len(leaves) == 1:
        return leaves[0]
    k = 1
    while k * 2 < len(leaves):
        k *= 2
    return sha(b"\1" + root(leaves[:k]) + root(leaves[k:]))


NAME = "elsewhere"
log_key = Key(bytes(range(32)))
key_id = sha(NAME.encode() + b"\n\x01" + log_key.public)[:4]
note_key = "%s+%s+%s" % (NAME, key_id.hex(), base64.b64encode(b"\1" + log_key.public).decode())


def signed_note(text):
    signature = base64.b64encode(key_id + log_key.sign(text.encode())).decode()
    return ("%s\n\u2014 %s %s\n" % (text, NAME, signature)).encode()


JOB = id_of("j", bytes([7] * 16))
JOINT = id_of("n", bytes([9] * 16))
PERSON = id_of("p", bytes([3] * 16))
phone = Key(bytes([5] * 32))
DEVICE = id_of("d", sha(phone.public)[:16])
photo = bytes(range(256)) * 40
name = canonical({"name": "Ailsa Rennick"})


def entries():
    previous = None
    bodies = [
        ("device-enrolled", {"device": DEVICE, "key": phone.public.hex(), "name": "phone 1"}),
        ("person-enrolled", {"person": PERSON, "name": sha(name).hex(), "roles": ["crew"]}),
    ]
    bodies += [
        ("bolt-tightened", {"joint": JOINT, "bolt": i, "step": "second step", "end": "stall", "tool": "SK-1", "setting": "2/4"})
        for i in range(1, 41)
    ]
    bodies += [
        ("photo-taken", {"joint": JOINT, "photo": sha(photo).hex(), "type": "image/jpeg"}),
        ("note-written", {"text": "µ café – 35 °C\n\"wet\" \\ \u0001"}),
        ("joint-signed", {"joint": JOINT, "as": "crew"}),
    ]
    for sequence, (kind, body) in enumerate(bodies):
        entry = {
            "format": 1, "job": JOB, "device": DEVICE, "sequence": sequence, "counter": sequence * 3 + 1,
            "at": "2026-11-25T08:%02d:00.000Z" % (sequence % 60), "offsetMinutes": 60, "by": PERSON,
            "kind": kind, "version": 1, "body": body,
        }
        if previous:
            entry["previous"] = previous
        data = canonical(entry)
        previous = sha(data).hex()
        yield data


def checkpoint(leaves):
    return signed_note("clampwright/%s\n%d\n%s\n" % (JOB, len(leaves), base64.b64encode(root(leaves)).decode()))


def main(out, checkpoint_out=None):
    kept = list(entries())
    receipts = [
        canonical({"arrived": "2026-11-25T12:00:00.%03dZ" % i, "entry": sha(data).hex(), "index": i, "job": JOB})
        for i, data in enumerate(kept)
    ]
    leaves = [sha(b"\0" + receipt) for receipt in receipts]
    if checkpoint_out:
        with open(checkpoint_out, "wb") as file:
            file.write(checkpoint(leaves[:17]))
    head = {"job": JOB, "device": DEVICE, "sequence": len(kept) - 1, "hash": sha(kept[-1]).hex()}
    head["signature"] = phone.sign(canonical({**head, "format": "clampwright-head-1"})).hex()
    rows = [receipt + b"\n" + data + b"\n" for receipt, data in zip(receipts, kept)]
    sections = [
        ("about", canonical({"job": JOB, "title": "Built elsewhere", "site": "Skerrow Sound", "made": "2026-11-26T00:00:00.000Z", "size": len(kept)})),
        ("keys", canonical({"log": note_key, "devices": [{"device": DEVICE, "key": phone.public.hex()}]})),
        ("checkpoint", checkpoint(leaves)),
        ("heads", canonical(head) + b"\n"),
        ("entries", b"".join(rows[:20])),
        ("entries", b"".join(rows[20:])),
        ("attachment", photo),
        ("report", b"%PDF-1.7 not a real one"),
        ("missing", canonical({"attachments": [sha(name).hex()]})),
    ]
    lines = b"".join(b"%s %d %s\n" % (title.encode(), len(data), sha(data).hex().encode()) for title, data in sections)
    seal = signed_note("clampwright-handover 1\n%d\n%s\n" % (len(sections), base64.b64encode(sha(lines)).decode()))
    with open(out, "wb") as file:
        file.write(b"clampwright-handover 1\n")
        for title, data in sections + [("seal", seal)]:
            file.write(b"%s %d %s\n" % (title.encode(), len(data), sha(data).hex().encode()) + data + b"\n")


if __name__ == "__main__":
    main(*sys.argv[1:])

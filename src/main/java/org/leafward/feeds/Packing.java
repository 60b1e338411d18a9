package org.leafward.feeds;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/** gzip (RFC 1952), the same octets for the same octets: without a date or a name. */
final class Packing {

	/**
	 * A third of the time of the usual 6 for a tenth more octets, on calendars of ours.
	 */
	private static final int LEVEL = 3;

	private Packing() {
	}

	static byte[] pack(byte[] octets) {
		ByteArrayOutputStream packed = new ByteArrayOutputStream(octets.length / 4 + 64);
		try (Packer out = new Packer(packed)) {
			out.write(octets);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return packed.toByteArray();
	}

	static byte[] unpack(byte[] packed) {
		try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed), 4096)) {
			return in.readAllBytes();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("a stored document can't be unpacked", ex);
		}
	}

	/** RFC 1952 section 2.3.1: the last four octets are the length, lowest first. */
	static long unpackedLength(byte[] packed) {
		return ByteBuffer.wrap(packed, packed.length - 4, 4).order(ByteOrder.LITTLE_ENDIAN).getInt() & 0xFFFF_FFFFL;
	}

	/** At our level; the library gives no other way to it. */
	private static final class Packer extends GZIPOutputStream {

		Packer(OutputStream packed) throws IOException {
			super(packed, 4096);
			this.def.setLevel(LEVEL);
		}

	}

}

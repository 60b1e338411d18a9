package org.leafward.pages.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera held a JPEG, from its Exif data. Layout of the segments by ITU-T T.81,
 * annex B; of the data by CIPA DC-008 (Exif 2.32), 4.5 and 4.6.4, tag 0x0112. Nothing
 * else is read of it. Pure.
 */
final class Upright {

	private static final int MARKER = 0xff;

	private static final int APP1 = 0xe1;

	private static final int START_OF_SCAN = 0xda;

	private static final int ORIENTATION = 0x0112;

	private static final byte[] EXIF = { 'E', 'x', 'i', 'f', 0, 0 };

	private Upright() {
	}

	/**
	 * The orientation.
	 * @param jpeg a JPEG
	 * @return 1 (as it is) to 8; 1 when nothing or nonsense is said
	 */
	static int of(byte[] jpeg) {
		ByteBuffer data = ByteBuffer.wrap(jpeg);
		int at = 2;
		while (at + 4 <= jpeg.length && (jpeg[at] & 0xff) == MARKER) {
			int marker = jpeg[at + 1] & 0xff;
			if (marker == MARKER) {
				at++;
				continue;
			}
			int length = data.getShort(at + 2) & 0xffff;
			if (marker == START_OF_SCAN || length < 2 || at + 2 + length > jpeg.length) {
				return 1;
			}
			if (marker == APP1 && begins(jpeg, at + 4, at + 2 + length)) {
				return tag(data.slice(at + 4 + EXIF.length, length - 2 - EXIF.length));
			}
			at += 2 + length;
		}
		return 1;
	}

	private static boolean begins(byte[] jpeg, int from, int end) {
		if (from + EXIF.length > end) {
			return false;
		}
		for (int i = 0; i < EXIF.length; i++) {
			if (jpeg[from + i] != EXIF[i]) {
				return false;
			}
		}
		return true;
	}

	private static int tag(ByteBuffer tiff) {
		if (tiff.limit() < 8) {
			return 1;
		}
		int order = tiff.getShort(0) & 0xffff;
		if (order != 0x4949 && order != 0x4d4d) {
			return 1;
		}
		tiff.order((order == 0x4949) ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
		int directory = tiff.getInt(4);
		if (directory < 8 || directory > tiff.limit() - 2) {
			return 1;
		}
		int entries = tiff.getShort(directory) & 0xffff;
		for (int i = 0; i < entries && directory + 2 + 12 * (i + 1) <= tiff.limit(); i++) {
			int entry = directory + 2 + 12 * i;
			if ((tiff.getShort(entry) & 0xffff) == ORIENTATION) {
				int value = tiff.getShort(entry + 8) & 0xffff;
				return (value >= 1 && value <= 8) ? value : 1;
			}
		}
		return 1;
	}

}

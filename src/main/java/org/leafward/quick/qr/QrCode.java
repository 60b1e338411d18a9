package org.leafward.quick.qr;

import org.leafward.measure.BadInput;
import org.leafward.pages.Svg;
import org.springframework.modulith.NamedInterface;

/**
 * An address as a QR code (ISO/IEC 18004), drawn dark on light on any page with the quiet
 * zone of four modules that the standard asks for.
 */
@NamedInterface("drawers")
public final class QrCode {

	/** Most octets that are encoded; more would make modules too small for a screen. */
	static final int MOST = 500;

	private static final int QUIET = 4;

	private QrCode() {
	}

	/**
	 * Draws a code, error correction level M (15 %).
	 * @param text what it says, 1 to 500 characters
	 * @param label what it is, for those who don't see it
	 * @return inline SVG
	 * @throws BadInput when the text is too long
	 */
	public static String svg(String text, String label) {
		if (text.isEmpty() || text.length() > MOST) {
			throw new BadInput("an address of %d characters is no QR code".formatted(text.length()), "address",
					"shorten leafward.base-url");
		}
		io.nayuki.qrcodegen.QrCode code = io.nayuki.qrcodegen.QrCode.encodeText(text,
				io.nayuki.qrcodegen.QrCode.Ecc.MEDIUM);
		int whole = code.size + 2 * QUIET;
		Svg svg = new Svg();
		svg.open("svg", "class", "qr", "viewBox", "0 0 %d %d".formatted(whole, whole), "role", "img", "aria-label",
				label, "shape-rendering", "crispEdges");
		svg.empty("rect", "class", "qr-ground", "width", whole, "height", whole);
		svg.empty("path", "class", "qr-dark", "d", path(code));
		return svg.close().toString();
	}

	/** One rectangle for each run of dark modules in a row. */
	private static String path(io.nayuki.qrcodegen.QrCode code) {
		StringBuilder path = new StringBuilder();
		for (int y = 0; y < code.size; y++) {
			for (int x = 0; x < code.size; x++) {
				int from = x;
				while (code.getModule(x, y)) {
					x++;
				}
				if (x > from) {
					path.append("M%d %dh%dv1H%dz".formatted(from + QUIET, y + QUIET, x - from, from + QUIET));
				}
			}
		}
		return path.toString();
	}

}

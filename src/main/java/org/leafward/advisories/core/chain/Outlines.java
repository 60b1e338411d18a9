package org.leafward.advisories.core.chain;

import java.util.ArrayList;
import java.util.List;
import org.leafward.measure.BadInput;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;

/**
 * Reads outlines that people type: a corner on each line, latitude before longitude, an
 * empty line between two outlines. The last corner needn't repeat the first.
 */
public final class Outlines {

	private static final String FIELD = "polygon";

	private Outlines() {
	}

	/**
	 * Reads outlines.
	 * @param text what was typed; blank for none
	 * @return closed rings that don't cross themselves
	 * @throws BadInput with the line that can't be used
	 */
	public static List<Ring> read(String text) {
		List<Ring> rings = new ArrayList<>();
		List<Position> corners = new ArrayList<>();
		int number = 0;
		for (String line : (text + "\n").split("\n", -1)) {
			number++;
			String words = line.strip();
			if (words.isEmpty()) {
				add(rings, corners);
				corners = new ArrayList<>();
				continue;
			}
			corners.add(corner(words, number));
		}
		add(rings, corners);
		return List.copyOf(rings);
	}

	private static Position corner(String words, int line) {
		String[] parts = words.split("[\\s,;]+");
		if (parts.length != 2) {
			throw new BadInput("line %d of the outline is no corner: '%s'".formatted(line, shortened(words)), FIELD,
					"write latitude and longitude in degrees, such as 42.15, -91.60");
		}
		try {
			double latitude = Double.parseDouble(parts[0]);
			double longitude = Double.parseDouble(parts[1]);
			return new Position(longitude, latitude);
		}
		catch (NumberFormatException ex) {
			throw new BadInput("line %d of the outline has no two numbers: '%s'".formatted(line, shortened(words)),
					FIELD, "write latitude and longitude in degrees, such as 42.15, -91.60");
		}
		catch (BadInput ex) {
			throw new BadInput("line %d of the outline is not on the earth".formatted(line), FIELD,
					"write latitude (-90 to 90) before longitude (-180 to 180)");
		}
	}

	private static String shortened(String words) {
		return (words.length() > 40) ? words.substring(0, 40) + "…" : words;
	}

	private static void add(List<Ring> rings, List<Position> corners) {
		if (corners.isEmpty()) {
			return;
		}
		if (!corners.get(0).equals(corners.get(corners.size() - 1))) {
			corners.add(corners.get(0));
		}
		Ring ring;
		try {
			ring = new Ring(corners);
		}
		catch (BadInput ex) {
			throw new BadInput("an outline can't be used: " + ex.getMessage(), FIELD,
					"give three corners or more that go around something");
		}
		if (crossesItself(ring)) {
			throw new BadInput("an outline crosses itself", FIELD,
					"give its corners in the order in which one walks around it");
		}
		rings.add(ring);
	}

	/**
	 * Whether two edges of a ring meet that are no neighbours.
	 * @param ring the ring
	 * @return true also where one corner lies on another edge
	 */
	static boolean crossesItself(Ring ring) {
		List<Position> line = ring.positions();
		int edges = line.size() - 1;
		for (int i = 0; i < edges; i++) {
			for (int k = i + 1; k < edges; k++) {
				boolean neighbours = k == i + 1 || (i == 0 && k == edges - 1);
				if (!neighbours && meet(line.get(i), line.get(i + 1), line.get(k), line.get(k + 1))) {
					return true;
				}
			}
		}
		return false;
	}

	private static boolean meet(Position a, Position b, Position c, Position d) {
		double ac = side(a, b, c);
		double ad = side(a, b, d);
		double ca = side(c, d, a);
		double cb = side(c, d, b);
		return (ac * ad < 0 && ca * cb < 0) || (ac == 0 && between(a, b, c)) || (ad == 0 && between(a, b, d))
				|| (ca == 0 && between(c, d, a)) || (cb == 0 && between(c, d, b));
	}

	private static double side(Position a, Position b, Position p) {
		return Math.signum((b.longitude() - a.longitude()) * (p.latitude() - a.latitude())
				- (b.latitude() - a.latitude()) * (p.longitude() - a.longitude()));
	}

	private static boolean between(Position a, Position b, Position p) {
		return Math.min(a.longitude(), b.longitude()) <= p.longitude()
				&& p.longitude() <= Math.max(a.longitude(), b.longitude())
				&& Math.min(a.latitude(), b.latitude()) <= p.latitude()
				&& p.latitude() <= Math.max(a.latitude(), b.latitude());
	}

	/**
	 * Writes outlines as {@link #read} takes them.
	 * @param rings closed rings
	 * @return lines
	 */
	public static String write(List<Ring> rings) {
		StringBuilder text = new StringBuilder();
		for (Ring ring : rings) {
			text.append((text.length() > 0) ? "\n" : "");
			ring.positions()
				.subList(0, ring.positions().size() - 1)
				.forEach((one) -> text.append(one.latitude()).append(", ").append(one.longitude()).append('\n'));
		}
		return text.toString();
	}

}

package org.leafward.climate.source.ghcn;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.StationId;
import org.leafward.measure.BadInput;

/**
 * Reads a GHCN-Daily station file: fixed-width (.dly) or the compact CSV by station,
 * plain or gzip, told apart by their content. Damaged lines are reported and left out.
 * <p>
 * Source of the layouts: NOAA, readme of GHCN-Daily, section III, and readme-by_station.
 */
public final class GhcnReader {

	/** Bytes that are read at most, after unpacking. */
	public static final long MOST_BYTES = 200_000_000;

	/** Problems that are kept with their text. */
	public static final int MOST_PROBLEMS = 50;

	/** Lines looked at to find out the layout. */
	private static final int TELLING_LINES = 50;

	private static final String EXPECTED = "give a GHCN-Daily file of one station: fixed-width (.dly) or by-station CSV "
			+ "(ID,YYYYMMDD,ELEMENT,VALUE,MFLAG,QFLAG,SFLAG,OBSTIME), plain or gzip";

	private final long mostBytes;

	public GhcnReader() {
		this(MOST_BYTES);
	}

	GhcnReader(long mostBytes) {
		this.mostBytes = mostBytes;
	}

	/**
	 * Reads a file.
	 * @param stream the bytes; not closed
	 * @param station whose file it must be
	 * @param name what the file is called, for messages
	 * @return its values and what was wrong with it
	 * @throws BadInput when it is empty, no GHCN-Daily file, another station's, too large
	 * or its compression is damaged
	 * @throws IOException when the stream breaks
	 */
	public GhcnFile read(InputStream stream, StationId station, String name) throws IOException {
		LineSource source = new LineSource(stream, this.mostBytes);
		GhcnCollector collector = new GhcnCollector(station);
		LineLayout layout = null;
		while (source.next()) {
			collector.nextLine();
			if (source.tooLong()) {
				collector.problem("the line is longer than %d characters".formatted(LineSource.LONGEST_LINE),
						"fetch the file again");
			}
			else if (layout != null) {
				layout.read(source.line(), source.length(), collector);
			}
			else {
				layout = firstLine(source, collector);
			}
			if (layout == null && collector.line() >= TELLING_LINES) {
				throw notGhcn(name);
			}
		}
		if (layout == null) {
			throw notGhcn(name);
		}
		return finished(collector, name);
	}

	private static @Nullable LineLayout firstLine(LineSource source, GhcnCollector collector) {
		byte[] line = source.line();
		int length = source.length();
		LineLayout layout = LineLayout.of(line, length);
		if (layout != null) {
			layout.read(line, length, collector);
		}
		else if (length > 0 && !isHeader(line, length)) {
			collector.problem("the line is in neither layout of GHCN-Daily", "remove it or fetch the file again");
		}
		return layout;
	}

	/** Official files have no header; some tools add the column names. */
	private static boolean isHeader(byte[] line, int length) {
		String text = new String(line, 0, length, StandardCharsets.ISO_8859_1).replace("\"", "");
		return text.regionMatches(true, 0, "ID,", 0, 3) && text.toUpperCase(Locale.ROOT).contains("ELEMENT");
	}

	private static GhcnFile finished(GhcnCollector collector, String name) {
		GhcnFile file = collector.finish();
		if (file.kept() + file.flagged() + file.missing() > 0) {
			return file;
		}
		if (collector.otherStation() != null) {
			throw new BadInput(
					"the file is of station %s, not of %s".formatted(collector.otherStation(), collector.station()),
					name, "give the file of %s".formatted(collector.station()));
		}
		throw new BadInput("the file has no value of TMIN, TMAX, PRCP, SNWD or AWND that can be used", name, EXPECTED);
	}

	private static BadInput notGhcn(String name) {
		return new BadInput("the file is empty or no GHCN-Daily file", name, EXPECTED);
	}

}

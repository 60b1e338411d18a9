package org.leafward.climate.source.ghcn;

import org.jspecify.annotations.Nullable;

/** One of the layouts a line can have. */
interface LineLayout {

	/**
	 * Takes the values of a line, or reports what is wrong with it.
	 * @param line bytes, of which the first {@code length} count
	 * @param length bytes in the line
	 * @param collector where to put them
	 */
	void read(byte[] line, int length, GhcnCollector collector);

	/**
	 * The layout a line looks like.
	 * @param line bytes
	 * @param length bytes in the line
	 * @return null for neither
	 */
	static @Nullable LineLayout of(byte[] line, int length) {
		if (FixedWidthLine.fits(line, length)) {
			return new FixedWidthLine();
		}
		return CompactCsvLine.fits(line, length) ? new CompactCsvLine() : null;
	}

}

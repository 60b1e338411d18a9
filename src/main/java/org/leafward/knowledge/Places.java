package org.leafward.knowledge;

import java.util.Map;

/** Where in a file each part of the document stands. */
public final class Places {

	/**
	 * A position.
	 *
	 * @param line from 1
	 * @param column from 1
	 */
	public record Place(int line, int column) {
	}

	private final String file;

	private final Map<String, Place> places;

	/**
	 * Creates the index.
	 * @param file the file's name
	 * @param places position by path, for example {@code /rules/3/kind}
	 */
	public Places(String file, Map<String, Place> places) {
		this.file = file;
		this.places = Map.copyOf(places);
	}

	/**
	 * A problem with a part of the document.
	 * @param path the part; when the file has no such part, the nearest one around it is
	 * shown
	 * @param what what is wrong
	 * @param mend what to write instead
	 * @return the problem with its line and column
	 */
	public Problem problem(String path, String what, String mend) {
		String around = path;
		while (!this.places.containsKey(around) && !around.isEmpty()) {
			around = around.substring(0, around.lastIndexOf('/'));
		}
		Place place = this.places.getOrDefault(around, new Place(0, 0));
		return new Problem(this.file, place.line(), place.column(), path, what, mend);
	}

}

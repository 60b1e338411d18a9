package org.leafward.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * Reference data for tests. Small typed tables lie in the folder {@code shared} of the
 * project and are always there. Large files (station records) are laid beside the
 * checkout: in the folder named by the system property {@code leafward.shared}, else in
 * {@code ../shared}, else in the folder named by the environment variable
 * {@code LEAFWARD_SHARED}. Where they are absent the tests that need them are skipped
 * with a loud word; with {@code CI=true} in the environment absence is a failure.
 */
public final class SharedData {

	private SharedData() {
	}

	/**
	 * A large file.
	 * @param name path below the folder, for example {@code climate/USW00094728.dly.gz}
	 * @return the file, which exists
	 */
	public static Path file(String name) {
		List<Path> places = Stream
			.of(System.getProperty("leafward.shared"), "../shared", System.getenv("LEAFWARD_SHARED"))
			.filter((place) -> place != null && !place.isBlank())
			.map((place) -> Path.of(place, name))
			.toList();
		for (Path place : places) {
			if (Files.isRegularFile(place)) {
				return place;
			}
		}
		String word = "REFERENCE DATA ABSENT: %s is not in any of %s; set -Dleafward.shared=<folder>".formatted(name,
				places);
		if ("true".equals(System.getenv("CI"))) {
			throw new AssertionError(word);
		}
		System.err.println("*** " + word + " *** test skipped ***");
		Assumptions.abort(word);
		throw new IllegalStateException(word);
	}

	/**
	 * The rows of a typed table of the project.
	 * @param name path below {@code shared}, a CSV with comment lines that begin with #
	 * and one line of column names
	 * @return the fields of each row
	 */
	public static List<String[]> table(String name) {
		return rows(Path.of("shared", name));
	}

	/**
	 * The rows of a CSV without quoted fields.
	 * @param file the file
	 * @return the fields of each row below the column names
	 */
	public static List<String[]> rows(Path file) {
		try (Stream<String> lines = Files.lines(file)) {
			return lines.filter((line) -> !line.isBlank() && !line.startsWith("#"))
				.skip(1)
				.map((line) -> line.split(",", -1))
				.peek((fields) -> Arrays.setAll(fields, (at) -> fields[at].strip()))
				.toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}

package org.leafward.knowledge;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What came of reading a file.
 *
 * @param <T> the record it is bound to
 * @param value the content; null when there are problems
 * @param places where each part of it stands, for checks that follow
 * @param problems everything that is wrong with the file
 */
public record Reading<T>(@Nullable T value, Places places, List<Problem> problems) {

	public Reading {
		problems = List.copyOf(problems);
	}

}

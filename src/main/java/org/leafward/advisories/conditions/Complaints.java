package org.leafward.advisories.conditions;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.Places;
import org.leafward.knowledge.Problem;
import org.leafward.measure.BadInput;

/** Gathers problems of one file. */
final class Complaints {

	private final Places places;

	private final List<Problem> problems = new ArrayList<>();

	Complaints(Places places) {
		this.places = places;
	}

	void add(String path, String what, String mend) {
		this.problems.add(this.places.problem(path, what, mend));
	}

	/** Null when it was refused, which is kept as a problem. */
	<T> @Nullable T tried(String path, Supplier<T> reads) {
		try {
			return reads.get();
		}
		catch (BadInput ex) {
			add(path, ex.what(), ex.mend());
			return null;
		}
	}

	List<Problem> problems() {
		return List.copyOf(this.problems);
	}

}

package org.leafward.lookalikes.key;

import java.util.ArrayList;
import java.util.List;
import org.leafward.knowledge.Places;
import org.leafward.knowledge.Problem;

/** Gathers problems of one file of the key. */
final class Complaints {

	private final Places places;

	private final List<Problem> problems = new ArrayList<>();

	Complaints(Places places) {
		this.places = places;
	}

	void add(String path, String what, String mend) {
		this.problems.add(this.places.problem(path, what, mend));
	}

	List<Problem> problems() {
		return List.copyOf(this.problems);
	}

}

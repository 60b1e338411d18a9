package org.leafward.advisories.core.watch;

import java.util.List;

/** What has to hold for a hit. */
public sealed interface Criterion {

	/**
	 * A figure meets a threshold.
	 *
	 * @param figure the figure
	 * @param least whether it has to be at least the threshold, else at most
	 * @param threshold name of the threshold
	 */
	record Compare(FigureSpec figure, boolean least, String threshold) implements Criterion {
	}

	/**
	 * One of several holds.
	 *
	 * @param of at least one
	 */
	record AnyOf(List<Criterion> of) implements Criterion {

		public AnyOf {
			of = List.copyOf(of);
		}

	}

}

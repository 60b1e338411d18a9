package org.leafward.workdays.core.board;

import java.util.Arrays;
import java.util.List;
import org.leafward.workdays.core.plan.CrewSite;
import org.leafward.workdays.core.plan.TravelRules;

/**
 * The shortest way through a few sites, beginning and ending at any of them: people come
 * to the first site and go home from the last on their own.
 */
public final class Tours {

	private final int[][] minutes;

	Tours(List<CrewSite> sites, TravelRules rules) {
		this.minutes = new int[sites.size()][sites.size()];
		for (int a = 0; a < sites.size(); a++) {
			for (int b = 0; b < a; b++) {
				this.minutes[a][b] = rules.minutes(sites.get(a).at(), sites.get(b).at());
				this.minutes[b][a] = this.minutes[a][b];
			}
		}
	}

	/**
	 * Minutes between two sites.
	 * @param a number of one
	 * @param b number of the other
	 * @return 0 from a site to itself
	 */
	public int between(int a, int b) {
		return this.minutes[a][b];
	}

	/**
	 * Minutes of the shortest way.
	 * @param sites numbers of sites in any order, each once
	 * @param count how many of them
	 * @return 0 for one site; beyond four the way in the given order, which no plan has
	 */
	public int minutes(int[] sites, int count) {
		switch (count) {
			case 0, 1 -> {
				return 0;
			}
			case 2 -> {
				return this.minutes[sites[0]][sites[1]];
			}
			case 3 -> {
				int ab = this.minutes[sites[0]][sites[1]];
				int bc = this.minutes[sites[1]][sites[2]];
				int ca = this.minutes[sites[2]][sites[0]];
				return ab + bc + ca - Math.max(ab, Math.max(bc, ca));
			}
			case 4 -> {
				return four(sites);
			}
			default -> {
				return length(Arrays.copyOf(sites, count));
			}
		}
	}

	/** Of the twelve ways through four: a way begins and ends at one of the six pairs. */
	private int four(int[] sites) {
		int best = Integer.MAX_VALUE;
		for (int a = 0; a < 4; a++) {
			for (int b = a + 1; b < 4; b++) {
				int c = (a > 0) ? 0 : (b > 1) ? 1 : 2;
				int d = 6 - a - b - c;
				int[] fromC = this.minutes[sites[c]];
				int[] fromD = this.minutes[sites[d]];
				int ends = Math.min(fromC[sites[a]] + fromD[sites[b]], fromC[sites[b]] + fromD[sites[a]]);
				best = Math.min(best, ends + fromC[sites[d]]);
			}
		}
		return best;
	}

	/**
	 * The shortest way as an order.
	 * @param sites numbers of sites, each once
	 * @param count how many of them
	 * @return the same in order; the first of several that are as short
	 */
	public int[] order(int[] sites, int count) {
		int[] best = Arrays.copyOf(sites, count);
		if (count <= 4) {
			permute(best.clone(), 0, best);
		}
		return best;
	}

	private void permute(int[] way, int from, int[] best) {
		if (from == way.length) {
			if (length(way) < length(best)) {
				System.arraycopy(way, 0, best, 0, way.length);
			}
			return;
		}
		for (int i = from; i < way.length; i++) {
			swap(way, from, i);
			permute(way, from + 1, best);
			swap(way, from, i);
		}
	}

	private static void swap(int[] way, int a, int b) {
		int held = way[a];
		way[a] = way[b];
		way[b] = held;
	}

	private int length(int[] way) {
		int sum = 0;
		for (int i = 1; i < way.length; i++) {
			sum += this.minutes[way[i - 1]][way[i]];
		}
		return sum;
	}

}

package org.leafward.workdays.core.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.measure.GeoPoint;
import org.leafward.workdays.core.plan.CrewSite;
import org.leafward.workdays.core.plan.TravelRules;

import static org.assertj.core.api.Assertions.assertThat;

/** Ways through a few sites against all orders in which they can be gone through. */
class ToursTests {

	@Test
	void noOtherOrderIsShorter() {
		Random random = new Random(7);
		List<CrewSite> sites = new ArrayList<>();
		for (int i = 0; i < 40; i++) {
			GeoPoint at = new GeoPoint(41 + 0.4 * random.nextDouble(), -74 + 0.6 * random.nextDouble(), 100);
			sites.add(new CrewSite("s" + i, "Garden " + i, at, Set.of()));
		}
		Tours tours = new Tours(sites, TravelRules.USUAL);
		for (int round = 0; round < 500; round++) {
			int[] some = random.ints(0, sites.size()).distinct().limit(1 + round % 4).toArray();
			int shortest = shortest(tours, -1, some, 0);
			assertThat(tours.minutes(some, some.length)).as("%d sites", some.length).isEqualTo(shortest);
			int[] order = tours.order(some, some.length);
			int length = 0;
			for (int i = 1; i < order.length; i++) {
				length += tours.between(order[i - 1], order[i]);
			}
			assertThat(length).isEqualTo(shortest);
			assertThat(order).containsExactlyInAnyOrder(some);
		}
	}

	private static int shortest(Tours tours, int from, int[] sites, int gone) {
		int best = (gone == (1 << sites.length) - 1) ? 0 : Integer.MAX_VALUE;
		for (int i = 0; i < sites.length; i++) {
			if ((gone >> i & 1) == 0) {
				int leg = (from < 0) ? 0 : tours.between(from, sites[i]);
				best = Math.min(best, leg + shortest(tours, sites[i], sites, gone | 1 << i));
			}
		}
		return best;
	}

}

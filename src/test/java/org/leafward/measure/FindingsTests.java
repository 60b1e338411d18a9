package org.leafward.measure;

import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** WCAG 2.2, 3.3.1: each item in error is identified. */
class FindingsTests {

	@Test
	void everyRefusalIsTold() {
		Findings all = new Findings();
		Supplier<Integer> count = all.read(() -> Given.whole("count", "many"));
		Supplier<String> label = all.read(() -> Given.text("label", "hedge"));
		all.check(() -> Given.page(-1));
		all.check(() -> Given.whole("count", "none"));
		assertThat(label.get()).isEqualTo("hedge");
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> all.give(() -> label.get() + count.get()))
			.satisfies((ex) -> {
				assertThat(ex.where()).isEqualTo("count");
				assertThat(ex.all()).hasSize(3).allSatisfy((one) -> assertThat(one.all()).containsExactly(one));
				assertThat(ex.byField()).containsOnlyKeys("count", "page")
					.containsEntry("count", "count 'many' is not a whole number: give a whole number such as 3.");
			});
	}

	@Test
	void whatCarriesSeveralIsTakenApart() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> {
			Findings all = new Findings();
			all.check(() -> new GeoPoint(91, 181, 1));
			all.end();
		}).satisfies((ex) -> assertThat(ex.byField()).containsOnlyKeys("latitude", "longitude"));
	}

	@Test
	void nothingRefusedGivesTheWhole() {
		Findings all = new Findings();
		Supplier<Integer> count = all.read(() -> 2);
		assertThat(all.give(() -> count.get() + 1)).isEqualTo(3);
	}

}

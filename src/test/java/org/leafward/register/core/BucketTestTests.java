package org.leafward.register.core;

import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;
import org.leafward.measure.Dimension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

class BucketTestTests {

	@Test
	void volumeByTime() {
		// 10 l in half a minute are 20 l in a whole one.
		assertThat(new BucketTest(10, 30).litresPerMinute()).isEqualTo(20, within(1e-9));
		// A 5-gallon bucket in 1 min 40 s: 3 gal/min, 11.356 l/min (231 cubic inches a
		// gallon).
		double bucket = Dimension.VOLUME.read("bucket", "5 gal");
		assertThat(new BucketTest(bucket, 100).litresPerMinute()).isEqualTo(11.356, within(0.001));
	}

	@Test
	void whatCantBeABucketIsRefusedByField() {
		assertThatThrownBy(() -> new BucketTest(0.1, 0)).isInstanceOfSatisfying(BadInput.class,
				(refused) -> assertThat(refused.byField()).containsOnlyKeys("bucket", "seconds")
					.containsEntry("bucket", "a bucket of 0.1 l is outside 0.5 to 1000: measure how much it holds."));
		assertThatThrownBy(() -> new BucketTest(Double.NaN, 30)).isInstanceOf(BadInput.class);
		assertThatThrownBy(() -> new BucketTest(10, 3601)).hasMessageContaining("3601 s is outside 1 to 3600");
	}

}

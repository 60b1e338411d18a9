package org.leafward.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.store.StoredRecord;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** What is kept of the records, and what goes. */
class RecordCacheTests {

	private final List<String> reads = new ArrayList<>();

	private long version = 1;

	@Test
	void theOneNotUsedForLongestGoesFirst() {
		RecordCache cache = new RecordCache(2 * tenDays().bytes(), this::read);
		cache.get(stored(1, 1));
		cache.get(stored(2, 1));
		cache.get(stored(1, 1));
		cache.get(stored(3, 1));
		assertThat(this.reads).containsExactly("XX000000001", "XX000000002", "XX000000003");
		cache.get(stored(1, 1));
		cache.get(stored(2, 1));
		assertThat(this.reads).hasSize(4).endsWith("XX000000002");
	}

	@Test
	void anotherVersionIsReadAnew() {
		RecordCache cache = new RecordCache(1 << 20, this::read);
		cache.get(stored(1, 1));
		this.version = 2;
		cache.get(stored(1, 2));
		cache.get(stored(1, 2));
		assertThat(this.reads).hasSize(2);
	}

	@Test
	void oneLargerThanTheBoundIsHandedOutAndNotKept() {
		RecordCache cache = new RecordCache(10, this::read);
		assertThat(cache.get(stored(1, 1))).isEqualTo(tenDays());
		assertThat(cache.get(stored(1, 1))).isEqualTo(tenDays());
		assertThat(this.reads).hasSize(2);
	}

	@Test
	void noOtherVersionIsHandedOut() {
		RecordCache cache = new RecordCache(1 << 20, this::read);
		cache.get(stored(1, 1));
		this.version = 2;
		assertThat(cache.get(stored(1, 1))).as("still kept").isEqualTo(tenDays());
		cache.get(stored(1, 2));
		assertThatExceptionOfType(RecordMovedOn.class).isThrownBy(() -> cache.get(stored(1, 1)))
			.withMessageContaining("version 1 of the record of XX000000001")
			.withMessageContaining("version 2 is stored");
	}

	@Test
	void anOlderVersionReadLateTakesNoPlace() {
		RecordCache cache = new RecordCache(1 << 20, this::read);
		this.version = 2;
		cache.get(stored(1, 2));
		this.version = 1;
		cache.get(stored(1, 1));
		cache.get(stored(1, 2));
		assertThat(this.reads).hasSize(2);
	}

	private StoredRecord read(StationId id) {
		this.reads.add(id.value());
		return new StoredRecord(tenDays(), this.version);
	}

	private static DailyRecord tenDays() {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (int day = 1; day <= 10; day++) {
			builder.set(Element.TMIN, LocalDate.of(2020, 1, day), day);
		}
		return builder.build();
	}

	private static StoredStation stored(int number, long version) {
		return new StoredStation(
				new Station(new StationId("XX%09d".formatted(number)), "Somewhere", new GeoPoint(45, 10, 0), false),
				version);
	}

}

package org.leafward.counties;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.leafward.counties.core.CountyAddress;
import org.leafward.counties.store.CalendarTable;
import org.leafward.counties.store.GardenTable;
import org.leafward.plants.Catalogue;
import org.leafward.register.SiteId;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.awaitility.Awaitility.await;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.willAnswer;
import static org.mockito.Mockito.mock;

/** Many strangers who ask for calendars that nobody asked for before. */
class CountyCalendarsLoadTests {

	private static final Instant NOW = Instant.parse("2026-11-26T10:00:00Z");

	private final CountDownLatch done = new CountDownLatch(1);

	private final CalendarTable table = mock();

	@Test
	void someWaitAndTheOthersAreSentAwayAtOnce() throws Exception {
		CountyCalendars calendars = calendars();
		CountyAddress address = CountyAddress.read("us-ia-alder-county", "roses", null, List.of("roses"));
		AtomicInteger away = new AtomicInteger();
		List<Thread> threads = new ArrayList<>();
		for (int i = 0; i < 60; i++) {
			Thread thread = new Thread(() -> {
				try {
					calendars.find(address);
				}
				catch (CountyCalendars.NotYet ex) {
					away.incrementAndGet();
				}
			});
			thread.start();
			threads.add(thread);
		}
		// One builds, eight or so wait, as the count is not exact.
		await().untilAsserted(() -> assertThat(away.get()).isGreaterThan(40));
		this.done.countDown();
		for (Thread thread : threads) {
			thread.join(20_000);
		}
		assertThatExceptionOfType(CountyCalendars.NotYet.class).as("the table of this test is always empty")
			.isThrownBy(() -> calendars.find(address));
	}

	private CountyCalendars calendars() {
		Regions regions = mock();
		given(regions.find(any())).willReturn(Optional.of(mock(County.class)));
		GardenTable gardens = mock();
		given(gardens.find(any())).willReturn(Optional
			.of(new Garden("us-ia-alder-county", new SiteId(UUID.randomUUID()), 1, LocalDate.of(2026, 11, 26), NOW)));
		given(this.table.find(any())).willReturn(Optional.empty());
		TransactionTemplate slow = mock();
		willAnswer((call) -> {
			this.done.await();
			return null;
		}).given(slow).executeWithoutResult(any());
		return new CountyCalendars(gardens, this.table, regions, mock(Catalogue.class), mock(CountyBuilder.class), slow,
				Clock.fixed(NOW, ZoneOffset.UTC));
	}

}

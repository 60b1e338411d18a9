package org.leafward.feeds;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.times;

class RebuildWorkerTests {

	private final FeedDocuments documents = mock();

	private final RebuildWorker worker = new RebuildWorker(this.documents, 1);

	@AfterEach
	void end() {
		this.worker.destroy();
	}

	/** A round is a minute; a change that touches very many calendars takes several. */
	@Test
	void goesOnAfterARoundUntilNothingIsLeft() {
		given(this.documents.rebuildStale(any())).willReturn(5_000, 5_000, 200, 0);
		this.worker.soon();
		await().untilAsserted(() -> then(this.documents).should(times(4)).rebuildStale(any(Duration.class)));
	}

	@Test
	void aRoundThatFailsLeavesTheRestToTheNextOne() {
		given(this.documents.rebuildStale(any())).willThrow(new IllegalStateException("database is away"))
			.willReturn(3, 0);
		this.worker.soon();
		await().untilAsserted(() -> then(this.documents).should(times(1)).rebuildStale(any()));
		this.worker.soon();
		await().untilAsserted(() -> then(this.documents).should(times(3)).rebuildStale(any()));
	}

	@Test
	void endsWithTheServerHoweverMuchIsLeft() throws Exception {
		CountDownLatch begun = new CountDownLatch(1);
		given(this.documents.rebuildStale(any())).willAnswer((call) -> {
			begun.countDown();
			try {
				new CountDownLatch(1).await();
			}
			catch (InterruptedException ex) {
				// As if the document had been built all the same.
			}
			return 1;
		});
		this.worker.soon();
		assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
		this.worker.destroy();
		await().during(Duration.ofMillis(300))
			.atMost(Duration.ofSeconds(5))
			.untilAsserted(() -> then(this.documents).should(times(1)).rebuildStale(any()));
	}

}

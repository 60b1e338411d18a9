package org.leafward.feeds.core;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.feeds.core.PollIndex.Answer;

import static org.assertj.core.api.Assertions.assertThat;

class PollIndexTests {

	/** The index against a map of the JDK, over putting, replacing and taking out. */
	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5 })
	void holdsWhatAMapHolds(long seed) {
		Random random = new Random(seed);
		PollIndex index = new PollIndex();
		Map<ByteBuffer, Answer> model = new HashMap<>();
		List<byte[]> keys = new ArrayList<>();
		for (int i = 0; i < 3_000; i++) {
			keys.add(key(random, seed));
		}
		for (int step = 0; step < 40_000; step++) {
			byte[] key = keys.get(random.nextInt(keys.size()));
			int form = random.nextInt(2);
			ByteBuffer place = place(key, form);
			switch (random.nextInt(4)) {
				case 0 -> {
					index.remove(key, form);
					model.remove(place);
				}
				case 1 -> {
					Answer dead = Answer.dead(random.nextBoolean());
					index.put(key, form, dead);
					model.put(place, dead);
				}
				case 2 -> index.asked(key, random.nextInt(600_000));
				default -> {
					byte[] tag = new byte[32];
					random.nextBytes(tag);
					Answer living = Answer.living(tag, random.nextLong(4_000_000_000L));
					index.put(key, form, living);
					model.put(place, living);
				}
			}
		}
		assertThat(index.size()).isEqualTo(model.size());
		for (byte[] key : keys) {
			for (int form = 0; form < 2; form++) {
				Answer expected = model.get(place(key, form));
				Answer found = index.find(key, form);
				if (expected == null) {
					assertThat(found).isNull();
				}
				else {
					assertThat(found).isNotNull();
					assertThat(found.tag()).isEqualTo(expected.tag());
					assertThat(found.modified()).isEqualTo(expected.modified());
					assertThat(found.expired()).isEqualTo(expected.expired());
				}
			}
		}
		index.clear();
		assertThat(index.size()).isZero();
	}

	/** Keys that fall into few segments, and some that begin alike. */
	private static byte[] key(Random random, long seed) {
		byte[] key = new byte[32];
		random.nextBytes(key);
		key[8] = (byte) (random.nextInt(3) << 6);
		if (seed % 2 == 0) {
			ByteBuffer.wrap(key).putLong(0, random.nextInt(50));
		}
		return key;
	}

	private static ByteBuffer place(byte[] key, int form) {
		return ByteBuffer.allocate(33).put(key).put((byte) form).flip();
	}

	@Test
	void anHourIsNotedOnceAndOutlivesAnotherDocument() {
		PollIndex index = new PollIndex();
		byte[] key = new byte[32];
		assertThat(index.asked(key, 5)).as("nobody knows it").isFalse();
		index.put(key, 0, Answer.living(new byte[32], 1_700_000_000L));
		assertThat(index.asked(key, 494_000)).isTrue();
		assertThat(index.asked(key, 494_000)).isFalse();
		index.put(key, 0, Answer.living(new byte[32], 1_800_000_000L));
		assertThat(index.asked(key, 494_000)).isFalse();
		assertThat(index.asked(key, 494_001)).isTrue();
		assertThat(index.find(key, 0).modified()).isEqualTo(1_800_000_000L);
		index.put(key, 0, Answer.dead(false));
		assertThat(index.asked(key, 494_002)).as("nobody comes back to a dead one").isFalse();
	}

	@Test
	void manyThreadsLoseNothing() throws Exception {
		PollIndex index = new PollIndex();
		ExecutorService threads = Executors.newFixedThreadPool(8);
		List<Future<?>> all = new ArrayList<>();
		for (int thread = 0; thread < 8; thread++) {
			Random random = new Random(thread);
			all.add(threads.submit(() -> {
				for (int i = 0; i < 20_000; i++) {
					byte[] key = new byte[32];
					random.nextBytes(key);
					byte[] tag = key.clone();
					index.put(key, 0, Answer.living(tag, i));
					assertThat(index.find(key, 0).tag()).isEqualTo(tag);
				}
			}));
		}
		for (Future<?> one : all) {
			one.get();
		}
		threads.shutdown();
		assertThat(index.size()).isEqualTo(160_000);
	}

}

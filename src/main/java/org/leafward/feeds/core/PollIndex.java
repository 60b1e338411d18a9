package org.leafward.feeds.core;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What each address answers to a poll, for a million addresses and more in some 90 octets
 * each: by the SHA-256 of the token, of which 128 bits are kept, the tag and the date of
 * the document, or that the address is dead. Safe for several threads.
 */
public final class PollIndex {

	private static final int SEGMENTS = 64;

	/** Longs of a row: two of the key, four of the tag, one of dates and state. */
	private static final int WIDTH = 7;

	private static final int LIVING = 1;

	private static final int REVOKED = 2;

	private static final int EXPIRED = 3;

	private final Segment[] segments = new Segment[SEGMENTS];

	/** Creates an empty one. */
	public PollIndex() {
		for (int i = 0; i < SEGMENTS; i++) {
			this.segments[i] = new Segment();
		}
	}

	/**
	 * What an address answers.
	 *
	 * @param tag SHA-256 of the document, 32 octets; null for a dead address
	 * @param modified when the document last changed, seconds since 1970
	 * @param expired whether it is dead as nobody used it; false while it lives
	 */
	public record Answer(byte @Nullable [] tag, long modified, boolean expired) {

		/**
		 * Of a living address.
		 * @param tag SHA-256 of its document
		 * @param modified when that last changed, seconds since 1970, before 2106
		 * @return the answer
		 */
		public static Answer living(byte[] tag, long modified) {
			return new Answer(tag, modified, false);
		}

		/**
		 * Of a dead address.
		 * @param expired whether it ended as nobody used it
		 * @return the answer
		 */
		public static Answer dead(boolean expired) {
			return new Answer(null, 0, expired);
		}

	}

	/**
	 * Looks an address up.
	 * @param hash SHA-256 of its token
	 * @param form number of the form, 0 to 15
	 * @return null for one that isn't here
	 */
	public @Nullable Answer find(byte[] hash, int form) {
		long high = long0(hash) ^ form;
		long low = long1(hash);
		return segment(low).find(high, low);
	}

	/**
	 * Notes what an address answers.
	 * @param hash SHA-256 of its token
	 * @param form number of the form, 0 to 15
	 * @param answer what
	 */
	public void put(byte[] hash, int form, Answer answer) {
		long high = long0(hash) ^ form;
		long low = long1(hash);
		segment(low).put(high, low, answer);
	}

	/**
	 * Forgets an address.
	 * @param hash SHA-256 of its token
	 * @param form number of the form, 0 to 15
	 */
	public void remove(byte[] hash, int form) {
		long high = long0(hash) ^ form;
		long low = long1(hash);
		segment(low).remove(high, low);
	}

	/**
	 * Notes that an address is asked now.
	 * @param hash SHA-256 of its token
	 * @param hour the hour, counted from 1970, before the year 3800
	 * @return whether nobody had noted that within the hour; false for one that isn't
	 * here
	 */
	public boolean asked(byte[] hash, int hour) {
		return segment(long1(hash)).asked(long0(hash), long1(hash), hour);
	}

	/** Forgets everything. */
	public void clear() {
		for (Segment segment : this.segments) {
			segment.clear();
		}
	}

	/**
	 * How many addresses are here.
	 * @return 0 or more
	 */
	public int size() {
		return Arrays.stream(this.segments).mapToInt((segment) -> segment.used).sum();
	}

	private Segment segment(long low) {
		return this.segments[(int) (low >>> 58)];
	}

	private static long long0(byte[] hash) {
		return ByteBuffer.wrap(hash).order(ByteOrder.BIG_ENDIAN).getLong(0);
	}

	private static long long1(byte[] hash) {
		return ByteBuffer.wrap(hash).order(ByteOrder.BIG_ENDIAN).getLong(8);
	}

	/**
	 * Open addressing with linear probing; rows are taken out by moving later ones up.
	 * The last long of a row is 0 where the row is empty: state in the lowest 2 bits,
	 * then 24 bits of the hour, then 32 of the date.
	 */
	private static final class Segment {

		private long[] rows = new long[WIDTH * 16];

		private int used;

		synchronized @Nullable Answer find(long high, long low) {
			int at = at(high, low);
			long state = this.rows[at + 6];
			return switch ((int) (state & 3)) {
				case LIVING -> Answer.living(tag(at), state >>> 26);
				case REVOKED -> Answer.dead(false);
				case EXPIRED -> Answer.dead(true);
				default -> null;
			};
		}

		private byte[] tag(int at) {
			ByteBuffer tag = ByteBuffer.allocate(32);
			for (int i = 2; i < 6; i++) {
				tag.putLong(this.rows[at + i]);
			}
			return tag.array();
		}

		synchronized void put(long high, long low, Answer answer) {
			if ((this.used + 1) * WIDTH * 10L > this.rows.length * 7L) {
				grow();
			}
			int at = at(high, low);
			if (this.rows[at + 6] == 0) {
				this.used++;
			}
			long hour = (this.rows[at + 6] >>> 2) & 0xFF_FFFF;
			this.rows[at] = high;
			this.rows[at + 1] = low;
			byte[] tag = answer.tag();
			if (tag != null) {
				ByteBuffer octets = ByteBuffer.wrap(tag);
				for (int i = 0; i < 4; i++) {
					this.rows[at + 2 + i] = octets.getLong(8 * i);
				}
			}
			int state = (tag != null) ? LIVING : answer.expired() ? EXPIRED : REVOKED;
			this.rows[at + 6] = (answer.modified() << 26) | (hour << 2) | state;
		}

		synchronized boolean asked(long high, long low, int hour) {
			int at = at(high, low);
			long row = this.rows[at + 6];
			if ((row & 3) != LIVING || ((row >>> 2) & 0xFF_FFFF) >= hour) {
				return false;
			}
			this.rows[at + 6] = (row & ~(0xFF_FFFFL << 2)) | ((long) hour << 2);
			return true;
		}

		synchronized void remove(long high, long low) {
			int gap = at(high, low);
			if (this.rows[gap + 6] == 0) {
				return;
			}
			this.used--;
			int next = next(gap);
			while (this.rows[next + 6] != 0) {
				int home = home(this.rows[next], this.rows[next + 1]);
				boolean stays = (gap <= next) ? gap < home && home <= next : gap < home || home <= next;
				if (!stays) {
					System.arraycopy(this.rows, next, this.rows, gap, WIDTH);
					gap = next;
				}
				next = next(next);
			}
			Arrays.fill(this.rows, gap, gap + WIDTH, 0);
		}

		synchronized void clear() {
			this.rows = new long[WIDTH * 16];
			this.used = 0;
		}

		private void grow() {
			long[] old = this.rows;
			this.rows = new long[old.length / 2 * 3 / WIDTH * WIDTH];
			for (int i = 0; i < old.length; i += WIDTH) {
				if (old[i + 6] != 0) {
					System.arraycopy(old, i, this.rows, at(old[i], old[i + 1]), WIDTH);
				}
			}
		}

		private int home(long high, long low) {
			// The lower half picked the segment by its upper bits.
			return (int) Long.remainderUnsigned(high ^ low, this.rows.length / WIDTH) * WIDTH;
		}

		private int next(int at) {
			return (at + WIDTH == this.rows.length) ? 0 : at + WIDTH;
		}

		/** Where the row is, or would be. */
		private int at(long high, long low) {
			int at = home(high, low);
			while (this.rows[at + 6] != 0 && (this.rows[at] != high || this.rows[at + 1] != low)) {
				at = next(at);
			}
			return at;
		}

	}

}

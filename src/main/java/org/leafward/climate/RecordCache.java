package org.leafward.climate;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.store.StoredRecord;
import org.leafward.climate.store.StoredStation;

/**
 * Daily records that were read lately, up to a number of bytes; those not used for
 * longest go first. Safe for use by threads: two that miss the same record both read it.
 */
final class RecordCache {

	private final long mostBytes;

	private final Function<StationId, StoredRecord> read;

	private final Map<StationId, StoredRecord> kept = new LinkedHashMap<>(16, 0.75f, true);

	private long bytes;

	/**
	 * Makes an empty cache.
	 * @param mostBytes bound on what is kept
	 * @param read gets a record
	 */
	RecordCache(long mostBytes, Function<StationId, StoredRecord> read) {
		this.mostBytes = mostBytes;
		this.read = read;
	}

	/**
	 * The record of a station.
	 * @param stored the station with the version of its record
	 * @return the record of that version
	 * @throws RecordMovedOn when another version is stored by now
	 */
	DailyRecord get(StoredStation stored) {
		StationId id = stored.station().id();
		synchronized (this.kept) {
			StoredRecord known = this.kept.get(id);
			if (known != null && known.version() == stored.recordVersion()) {
				return known.record();
			}
		}
		StoredRecord read = this.read.apply(id);
		keep(id, read);
		if (read.version() != stored.recordVersion()) {
			throw new RecordMovedOn(id, stored.recordVersion(), read.version());
		}
		return read.record();
	}

	private void keep(StationId id, StoredRecord read) {
		synchronized (this.kept) {
			StoredRecord before = this.kept.get(id);
			if (before != null && before.version() > read.version()) {
				return;
			}
			this.kept.put(id, read);
			this.bytes += read.record().bytes() - ((before != null) ? before.record().bytes() : 0);
			Iterator<StoredRecord> oldest = this.kept.values().iterator();
			while (this.bytes > this.mostBytes && oldest.hasNext()) {
				this.bytes -= oldest.next().record().bytes();
				oldest.remove();
			}
		}
	}

}

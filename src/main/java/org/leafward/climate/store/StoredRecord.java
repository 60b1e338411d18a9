package org.leafward.climate.store;

import org.leafward.climate.core.DailyRecord;

/**
 * A daily record as it stands in the table.
 *
 * @param record the record, empty while there is none
 * @param version which {@link StoredStation#recordVersion} it is; 0 for an unknown
 * station
 */
public record StoredRecord(DailyRecord record, long version) {
}

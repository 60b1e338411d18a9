package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AdvisoryId;
import org.leafward.reminders.core.AdvisoryNotice.News;

/**
 * The message of an advisory that a row tells.
 *
 * @param advisory the advisory
 * @param number of the message, from 1
 * @param news what of it is new to the person
 */
public record OfAdvisory(AdvisoryId advisory, int number, News news) {

	static @Nullable OfAdvisory of(ResultSet row) throws SQLException {
		UUID advisory = row.getObject("advisory", UUID.class);
		return (advisory != null) ? new OfAdvisory(new AdvisoryId(advisory), row.getInt("advisory_number"),
				News.valueOf(row.getString("advisory_news"))) : null;
	}

}

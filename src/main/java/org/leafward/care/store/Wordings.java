package org.leafward.care.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.care.TaskText;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * The words of tasks, kept in memory once they were read: they never change under their
 * name, and many tasks say the same. To join them to each list of tasks was most of what
 * the database had to do for a calendar.
 */
@Component
class Wordings {

	/** Some kilobyte each; the words of a few thousand sites. */
	private static final int MOST = 10_000;

	private final JdbcClient database;

	private final Map<UUID, TaskText> known = new LinkedHashMap<>(256, 0.75F, true) {
		@Override
		protected boolean removeEldestEntry(Map.Entry<UUID, TaskText> eldest) {
			return size() > MOST;
		}
	};

	Wordings(JdbcClient database) {
		this.database = database;
	}

	/**
	 * The words of some tasks.
	 * @param names their names, in any order, also several times
	 * @return those that there are; what was tidied away meanwhile is missing
	 */
	Map<UUID, TaskText> of(Collection<UUID> names) {
		Map<UUID, TaskText> found = new HashMap<>();
		List<UUID> unknown = new ArrayList<>();
		synchronized (this.known) {
			for (UUID name : names) {
				TaskText text = this.known.get(name);
				if (text != null) {
					found.put(name, text);
				}
				else {
					unknown.add(name);
				}
			}
		}
		if (!unknown.isEmpty()) {
			Map<UUID, TaskText> read = new HashMap<>();
			this.database.sql("""
					select id, title, what, amount, why, otherwise, caution from care.wording where id = any(?)
					""").param(unknown.stream().distinct().toArray(UUID[]::new)).query((row) -> {
				read.put(row.getObject("id", UUID.class), text(row));
			});
			synchronized (this.known) {
				this.known.putAll(read);
			}
			found.putAll(read);
		}
		return found;
	}

	static TaskText text(ResultSet row) throws SQLException {
		return new TaskText(row.getString("title"), row.getString("what"), row.getString("amount"),
				row.getString("why"), row.getString("otherwise"), row.getString("caution"));
	}

}

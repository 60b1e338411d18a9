package org.leafward.lookalikes.store;

import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Who changed the key. A version stays for others when its author is gone. */
@Component
class OwnKeyVersions implements PersonalData {

	private final JdbcClient database;

	OwnKeyVersions(JdbcClient database) {
		this.database = database;
	}

	@Override
	public int order() {
		return 25;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		return Map.of("changes of the look-alike key", this.database.sql("""
				select file, version, note, at from lookalikes.key_version where by_person = ? order by at, id
				""").param(person.value()).query(Rows::plain).list());
	}

	@Override
	public void forget(PersonId person) {
		this.database.sql("update lookalikes.key_version set by_person = null where by_person = ?")
			.param(person.value())
			.update();
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		this.database.sql("update lookalikes.key_version set by_person = ? where by_person = ?")
			.params(into.value(), from.value())
			.update();
	}

}

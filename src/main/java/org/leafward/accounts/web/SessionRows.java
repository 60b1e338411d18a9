package org.leafward.accounts.web;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.session.jdbc.PostgreSqlJdbcIndexedSessionRepositoryCustomizer;

/**
 * Two requests of one session at a time, as when somebody presses a button twice, may add
 * the same attribute to it: the later one counts, where the second would fail otherwise.
 */
@Configuration(proxyBeanMethods = false)
class SessionRows {

	@Bean
	PostgreSqlJdbcIndexedSessionRepositoryCustomizer sessionRowsMayMeet() {
		return new PostgreSqlJdbcIndexedSessionRepositoryCustomizer();
	}

}

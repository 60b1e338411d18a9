package org.leafward.accounts.web;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.time.Instant;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;
import org.springframework.test.context.ContextConfiguration;

/**
 * A server with one of each thing that somebody may own, where time stands still; one for
 * all tests of who may do what.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(properties = { "leafward.operator-token=" + AccessServer.TOKEN, "leafward.rate-limits=false",
		"spring.quartz.auto-startup=false" })
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
@Import({ AccessThings.class, AccessGroups.class, AccessServer.Times.class })
@interface AccessServer {

	/** Opens the API as the operator. */
	String TOKEN = "a-token-for-the-walk-0123456789";

	/** The clock at the start. */
	@TestConfiguration(proxyBeanMethods = false)
	class Times {

		static final Instant NOW = Instant.parse("2026-05-20T15:00:00Z");

		@Bean
		@Primary
		SettableClock settableClock() {
			return new SettableClock(NOW);
		}

	}

}

package org.leafward.support;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;

/**
 * The demo, at no address of its own and without limits on calls. A start takes longer
 * than most tests, so all that can live with each other's traces share this one: add what
 * you look at, don't count what others may add.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT,
		properties = { "leafward.base-url=", "leafward.operator-token=" + DemoServer.TOKEN,
				"leafward.rate-limits=false" })
@ActiveProfiles("demo")
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
public @interface DemoServer {

	/** Opens the API as the operator. */
	String TOKEN = "a-token-for-tests-only-0123456789";

}

package org.leafward.support;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ContextConfiguration;

/**
 * A server with nothing in it at the start; shared like {@link DemoServer}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(properties = "leafward.operator-token=" + EmptyServer.TOKEN)
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
public @interface EmptyServer {

	/** Opens the API as the operator. */
	String TOKEN = "a-token-for-tests-only-0123456789";

}

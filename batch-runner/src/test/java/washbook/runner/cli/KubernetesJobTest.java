package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import io.kubernetes.client.openapi.models.V1Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The manifest of an Indexed Job, by what the batch/v1 API asks of one. */
final class KubernetesJobTest {
  private Map<?, ?> job;

  @BeforeEach
  void readTheManifest() throws IOException {
    String text = Files.readString(Path.of("src/cluster/kubernetes-job.yaml"));
    job = new Yaml(new SafeConstructor(new LoaderOptions())).load(text);
  }

  /** Names, kinds of values and what must be there, in every part of it. */
  @Test
  void theApiKnowsEveryFieldOfIt() {
    JsonObject manifest = new Gson().toJsonTree(job).getAsJsonObject();
    assertDoesNotThrow(() -> V1Job.validateJsonElement(manifest));
  }

  @Test
  void aFieldThatTheApiDoesNotKnowIsFound() {
    JsonObject manifest = new Gson().toJsonTree(job).getAsJsonObject();
    JsonObject template = manifest.getAsJsonObject("spec").getAsJsonObject("template");
    JsonObject container =
        template.getAsJsonObject("spec").getAsJsonArray("containers").get(0).getAsJsonObject();
    container.addProperty("imagePulPolicy", "Always");
    IllegalArgumentException found =
        assertThrows(IllegalArgumentException.class, () -> V1Job.validateJsonElement(manifest));
    assertTrue(found.getMessage().contains("imagePulPolicy"), found.getMessage());
  }

  @Test
  void itIsAnIndexedJobWhosePodsEndOnce() {
    assertEquals("batch/v1", job.get("apiVersion"));
    assertEquals("Job", job.get("kind"));
    assertEquals("Indexed", at(job, "spec").get("completionMode"));
    assertEquals("Never", pod().get("restartPolicy"));
  }

  @Test
  void theCommandHasAsManyPartsAsTheJobHasIndexesAndCountsFromOne() {
    Object parts = at(job, "spec").get("completions");
    List<?> command = (List<?>) container().get("command");
    assertEquals(List.of("/bin/sh", "-c"), command.subList(0, 2));
    String line = command.get(2).toString();
    assertTrue(line.contains("--shard \"$((JOB_COMPLETION_INDEX + 1))/" + parts + "\""), line);
  }

  @Test
  void everyMountedVolumeIsThere() {
    assertEquals(
        names((List<?>) pod().get("volumes")), names((List<?>) container().get("volumeMounts")));
  }

  private Map<?, ?> pod() {
    return at(at(at(job, "spec"), "template"), "spec");
  }

  private Map<?, ?> container() {
    return (Map<?, ?>) ((List<?>) pod().get("containers")).get(0);
  }

  private static Map<?, ?> at(Map<?, ?> map, String key) {
    return (Map<?, ?>) map.get(key);
  }

  private static Set<String> names(List<?> things) {
    Set<String> names = new TreeSet<>();
    things.forEach(thing -> names.add(((Map<?, ?>) thing).get("name").toString()));
    return names;
  }
}

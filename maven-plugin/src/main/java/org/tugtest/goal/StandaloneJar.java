package org.tugtest.goal;

import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.eclipse.aether.RepositorySystem;
import org.eclipse.aether.RepositorySystemSession;
import org.eclipse.aether.artifact.DefaultArtifact;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.resolution.ArtifactRequest;
import org.eclipse.aether.resolution.ArtifactResolutionException;

/** Finds the stand-alone program, which lies beside this plugin in the repositories of Maven. */
record StandaloneJar(
    RepositorySystem system, RepositorySystemSession session, List<RemoteRepository> repositories) {
  private static final String CLASSIFIER = "standalone";

  /**
   * The jar on disk.
   *
   * @param plugin {@code group:artifact:version}
   */
  Path find(String plugin) throws MojoExecutionException {
    String[] parts = plugin.split(":", -1);
    DefaultArtifact artifact = new DefaultArtifact(parts[0], parts[1], CLASSIFIER, "jar", parts[2]);
    try {
      return system
          .resolveArtifact(session, new ArtifactRequest(artifact, repositories, null))
          .getArtifact()
          .getFile()
          .toPath();
    } catch (ArtifactResolutionException missing) {
      throw new MojoExecutionException(
          "the stand-alone program of the guard is not in the local repository; run once without"
              + " --offline, or install the plugin again (mvn install): "
              + missing.getMessage(),
          missing);
    }
  }
}

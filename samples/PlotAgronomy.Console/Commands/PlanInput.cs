namespace PlotAgronomy.Sample.Commands;

/// <summary>Reads a plan file, or says on stderr why not.</summary>
internal static class PlanInput
{
    internal static string DemoFile => Path.Combine(AppContext.BaseDirectory, "data", "fall-blend.json");

    internal static int Read(string? file, ConsoleStreams streams, out PlotPlan? plan)
    {
        plan = null;
        string path = file ?? DemoFile;
        if (string.IsNullOrWhiteSpace(path))
        {
            streams.Error.WriteLine("cannot read a plan: the name of the file is empty");
            return ExitCode.Usage;
        }

        if (Directory.Exists(path))
        {
            streams.Error.WriteLine($"cannot read '{path}': it is a folder");
            return ExitCode.Usage;
        }

        string json;
        try
        {
            json = File.ReadAllText(path);
        }
        catch (Exception error) when (error is FileNotFoundException or DirectoryNotFoundException)
        {
            streams.Error.WriteLine($"cannot read '{path}': no such file");
            return ExitCode.Usage;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            streams.Error.WriteLine($"cannot read '{path}': {error.Message}");
            return ExitCode.Usage;
        }

        var reading = PlanFile.Read(json, new PlanFolder(path).Open);
        foreach (var problem in reading.Problems)
        {
            streams.Error.WriteLine($"{Path.GetFileName(path)}: {problem}");
        }

        foreach (var taken in reading.Taken)
        {
            streams.Error.WriteLine($"{Path.GetFileName(path)}: taken so: {taken}");
        }

        plan = reading.Plan;
        return plan is null ? ExitCode.BadInput : ExitCode.Done;
    }
}

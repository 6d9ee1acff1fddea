namespace PlotAgronomy.Sample.Commands;

/// <summary>Opens files that a plan names: only below the plan's own folder, never through a link or a way up.</summary>
/// <param name="plan">Path of the plan.</param>
internal sealed class PlanFolder(string plan)
{
    /// <summary>Far more than an outline has.</summary>
    private const long MostBytes = 20_000_000;

    private readonly string folder = Path.GetDirectoryName(Path.GetFullPath(plan)) ?? Path.GetFullPath(".");

    /// <summary>The text of a file; null when it lies elsewhere, behind a link, or cannot be read.</summary>
    internal string? Open(string name)
    {
        string[] steps = name.Split('/', '\\');
        if (
            Path.IsPathRooted(name)
            || steps.Any(s => s.Length == 0 || s is "." or ".." || s.Contains(':') || s.Any(char.IsControl))
        )
        {
            return null;
        }

        string path = folder;
        foreach (string step in steps)
        {
            path = Path.Combine(path, step);
            if (new FileInfo(path).LinkTarget is not null || new DirectoryInfo(path).LinkTarget is not null)
            {
                return null;
            }
        }

        var file = new FileInfo(path);
        if (!file.Exists || file.Length > MostBytes)
        {
            return null;
        }

        try
        {
            return File.ReadAllText(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}

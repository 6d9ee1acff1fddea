using System.CommandLine;
using System.Globalization;
using PlotAgronomy.Records;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Where the plot book lies and who writes it: a folder beside the plan, a file a writer.</summary>
internal sealed class BookOptions
{
    private const string FolderName = "plot-book";
    private const string Owner = "owner";

    private readonly Option<string?> book = new("--book")
    {
        Description = "Folder of the plot book; 'plot-book' beside the plan when left out.",
    };

    private readonly Option<string?> writer = new("--writer")
    {
        Description = "Who writes: letters, digits and hyphens; 'owner' when left out.",
    };

    internal void AddTo(Command command, bool writes)
    {
        command.Options.Add(book);
        if (writes)
        {
            command.Options.Add(writer);
        }
    }

    /// <summary>The folder that is named, else the one beside a file.</summary>
    internal string FolderFor(ParseResult parsed, string? besides)
    {
        string beside = besides is null ? "." : Path.GetDirectoryName(Path.GetFullPath(besides)) ?? ".";
        return parsed.GetValue(book) ?? Path.Combine(beside, FolderName);
    }

    /// <summary>Opens a folder; makes it first where it is written to.</summary>
    internal PlotBookFolder? Open(ParseResult parsed, string folder, bool writes, Action<string> say)
    {
        string name = writes ? parsed.GetValue(writer) ?? Owner : Owner;
        try
        {
            if (writes)
            {
                Directory.CreateDirectory(folder);
            }

            return PlotBookFolder.Open(folder, name);
        }
        catch (DirectoryNotFoundException)
        {
            say($"there is no plot book '{folder}'; 'record' begins one");
        }
        catch (ArgumentException refused)
        {
            say($"--writer: {refused.Message.Split(" (Parameter ")[0]}");
        }

        return null;
    }

    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

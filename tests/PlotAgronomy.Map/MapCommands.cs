using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Printing;
using PlotAgronomy.Map.Users;

namespace PlotAgronomy.Map;

/// <summary>Reads the command line and prints one map of the code.</summary>
internal static class MapCommands
{
    private const string Usage = "Say one of: rooms, folders, cycles, members, unused, path Type.Member Type.Member";

    internal static int Run(string[] words, TextWriter output, TextWriter complaints)
    {
        if (!IsKnown(words))
        {
            complaints.WriteLine(Usage);
            return 2;
        }

        try
        {
            foreach (string line in Print(words))
            {
                output.WriteLine(line);
            }

            return 0;
        }
        catch (InvalidDataException wrong)
        {
            complaints.WriteLine(wrong.Message);
            return 2;
        }
    }

    private static bool IsKnown(string[] words) =>
        words is ["rooms" or "folders" or "cycles" or "members" or "unused"] or ["path", _, _];

    private static IEnumerable<string> Print(string[] words)
    {
        string root = FindRoot();
        return words[0] switch
        {
            "rooms" => RoomsPrinter.Print(Checked(CodeModel.LoadLibrary(root))),
            "folders" => FoldersPrinter.Print(Checked(CodeModel.LoadLibrary(root))),
            "cycles" => CyclesPrinter.Print(Checked(CodeModel.LoadLibrary(root))),
            "members" => MembersPrinter.Print(Checked(CodeModel.LoadEverything(root)), DocWords.Read(root)),
            "unused" => UnusedPrinter.Print(Checked(CodeModel.LoadEverything(root)), DocWords.Read(root)),
            _ => PathPrinter.Print(Checked(CodeModel.LoadEverything(root)), words[1], words[2]),
        };
    }

    /// <summary>A name without a meaning is an edge lost, so a map of such code would be wrong.</summary>
    private static CodeModel Checked(CodeModel model) => model.NotUnderstood.Count == 0
        ? model
        : throw new InvalidDataException(
            $"{model.NotUnderstood.Count} names have no meaning; build first. The first: {model.NotUnderstood[0]}");

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "PlotAgronomy.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidDataException("The map must run inside a checkout.");
    }
}

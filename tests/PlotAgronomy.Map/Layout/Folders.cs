using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Sources;

namespace PlotAgronomy.Map.Layout;

/// <summary>Folders of the library as paths below the project, the rooms among them; the root's path is empty.</summary>
/// <remarks>A room is a first folder in which a file declares the namespace of that folder or one below it.
/// Every other first folder holds a topic of the root, in the root's namespace.</remarks>
internal sealed class Folders
{
    private readonly Dictionary<string, string> _folders;
    private readonly HashSet<string> _rooms;

    internal Folders(CodeModel model)
    {
        var library = model.Files.Where(f => f.Part == Part.Library).ToList();
        _folders = library.ToDictionary(f => f.Path, f => FolderOf(f.Path, f.ProjectFolder));
        _rooms = [.. library.Where(f => IsNamedAfter(f, First(_folders[f.Path]))).Select(f => First(_folders[f.Path]))];
    }

    internal string FolderOf(string file) => _folders[file];

    internal string RoomOf(string file) => _rooms.Contains(First(_folders[file])) ? First(_folders[file]) : "";

    private static string FolderOf(string file, string projectFolder) =>
        Path.GetDirectoryName(file[(projectFolder.Length + 1)..])!.Replace('\\', '/');

    private static string First(string folder) => folder.Split('/')[0];

    private static bool IsNamedAfter(CodeFile file, string first) =>
        first.Length > 0
        && $"{file.Namespace}.".StartsWith($"{Path.GetFileName(file.ProjectFolder)}.{first}.", StringComparison.Ordinal);
}

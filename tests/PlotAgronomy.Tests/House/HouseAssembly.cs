using System.Reflection;
using System.Runtime.CompilerServices;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>The library's assembly as the house rules see it.</summary>
internal static class HouseAssembly
{
    internal static Assembly Library => typeof(ApplicationRate).Assembly;

    internal static IEnumerable<Type> AllTypes => Library.GetTypes().Where(t => t.Namespace?.StartsWith("PlotAgronomy", StringComparison.Ordinal) == true || IsCompilerMade(t));

    internal static IEnumerable<Type> PublicTypes => Library.GetExportedTypes();

    internal static bool IsCompilerMade(Type type) =>
        type.IsDefined(typeof(CompilerGeneratedAttribute), false) || (type.DeclaringType is { } outer && IsCompilerMade(outer));

    private static readonly Lazy<ILookup<string, string>> Rooms = new(() =>
        Directory.EnumerateFiles(Repository.PathOf("src/PlotAgronomy"), "*.cs", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Repository.PathOf("src/PlotAgronomy"), f).Split(Path.DirectorySeparatorChar))
            .Where(parts => parts[0] is not ("obj" or "bin"))
            .ToLookup(parts => parts[^1].Split('.')[0], parts => parts.Length == 1 ? "" : parts[0]));

    /// <summary>The room a type lives in; "" for the root, null for what the compiler put outside. An everyday noun has the root
    /// namespace wherever its file lies.</summary>
    internal static string? RoomOf(Type type)
    {
        var outer = type.IsNested ? Outermost(type) : type;
        return outer.Namespace == "PlotAgronomy" ? FolderOf(outer)
            : outer.Namespace?.StartsWith("PlotAgronomy.", StringComparison.Ordinal) == true ? outer.Namespace["PlotAgronomy.".Length..].Split('.')[0]
            : null;
    }

    /// <summary>The first folder of the file that has the type's name.</summary>
    internal static string FolderOf(Type type) => Rooms.Value[type.Name.Split('`')[0]].FirstOrDefault() ?? "";

    private static Type Outermost(Type type) => type.DeclaringType is { } outer ? Outermost(outer) : type;
}

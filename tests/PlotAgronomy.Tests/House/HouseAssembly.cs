using System.Reflection;
using System.Runtime.CompilerServices;

namespace PlotAgronomy.Tests.House;

/// <summary>The library's assembly as the house rules see it.</summary>
internal static class HouseAssembly
{
    internal static Assembly Library => typeof(ApplicationRate).Assembly;

    internal static IEnumerable<Type> AllTypes => Library.GetTypes().Where(t => t.Namespace?.StartsWith("PlotAgronomy", StringComparison.Ordinal) == true || IsCompilerMade(t));

    internal static IEnumerable<Type> PublicTypes => Library.GetExportedTypes();

    internal static bool IsCompilerMade(Type type) =>
        type.IsDefined(typeof(CompilerGeneratedAttribute), false) || (type.DeclaringType is { } outer && IsCompilerMade(outer));

    /// <summary>The room a type lives in; "" for the root, null for what the compiler put outside.</summary>
    internal static string? RoomOf(Type type)
    {
        string? name = (type.IsNested ? Outermost(type) : type).Namespace;
        return name == "PlotAgronomy" ? "" : name?.StartsWith("PlotAgronomy.", StringComparison.Ordinal) == true ? name["PlotAgronomy.".Length..].Split('.')[0] : null;
    }

    private static Type Outermost(Type type) => type.DeclaringType is { } outer ? Outermost(outer) : type;
}

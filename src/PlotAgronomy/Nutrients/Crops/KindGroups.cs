using PlotAgronomy.Seeds;

namespace PlotAgronomy.Nutrients;

/// <summary>Functional groups as rows of tables that otherwise name kinds.</summary>
internal static class KindGroups
{
    private static readonly EnumWords<FunctionalGroup> Words = EnumWords<FunctionalGroup>.FromNames();

    /// <summary>Id of a kind's group, such as <c>group-root-crop</c>.</summary>
    internal static string IdOf(CropKind kind) => $"group-{Words[kind.Group].Replace(' ', '-')}";
}

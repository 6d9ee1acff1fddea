using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Users;

namespace PlotAgronomy.Map.Printing;

/// <summary>What is public or internal and used by nobody but tests.</summary>
internal static class UnusedPrinter
{
    private const int WidestMember = 60;

    internal static IEnumerable<string> Print(CodeModel model, DocWords docs)
    {
        var unused = new MemberUses(model, docs).Unused();
        var rooms = unused.GroupBy(u => u.Room).ToList();
        return
        [
            "Types and members, public and internal, that no code of the library, no sample and no example of a page uses.",
            "A type stands for all in it; a type that only its own members use counts as unused.",
            "A value of an enumeration may still be read from a table by its word. Pages: the bare name stands in their prose.",
            "",
            .. TextTable.Lay(Head, rooms.Select(r => Counts(Names.Of(r.Key), [.. r])).Append(Counts("all", unused))),
            .. rooms.SelectMany(r => Section(Names.Of(r.Key), [.. r])),
        ];
    }

    private static IReadOnlyList<string> Head => ["room", "public", "of these tested", "internal", "of these tested", "all"];

    private static IReadOnlyList<string> Counts(string name, IReadOnlyList<MemberUse> unused)
    {
        var parts = unused.ToLookup(u => u.Member.IsPublic);
        return
        [
            name,
            .. new[] { true, false }.SelectMany(isPublic => new[]
            {
                TextTable.Number(parts[isPublic].Count()),
                TextTable.Number(parts[isPublic].Count(u => u.TestFiles > 0)),
            }),
            TextTable.Number(unused.Count),
        ];
    }

    private static IEnumerable<string> Section(string room, IReadOnlyList<MemberUse> unused) =>
    [
        "",
        $"{room} ({TextTable.Number(unused.Count)})",
        .. TextTable.Lay(["reach", "kind", "member", "tests", "pages", "line"], unused.Select(Row)),
    ];

    private static string[] Row(MemberUse use) =>
    [
        use.Member.IsPublic ? "public" : "internal",
        Kinds.Word(use.Member.Kind),
        TextTable.Shorten(use.Member.ShortName, WidestMember),
        use.TestFiles > 0 ? "tests" : "none",
        use.InProse ? "pages" : "",
        $"{Path.GetFileName(use.Member.File)}:{TextTable.Number(use.Member.Line)}",
    ];
}

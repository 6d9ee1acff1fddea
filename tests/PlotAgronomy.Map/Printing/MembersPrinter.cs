using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Users;

namespace PlotAgronomy.Map.Printing;

/// <summary>Who uses what is public: a table of the rooms, then every type and member.</summary>
internal static class MembersPrinter
{
    private static readonly UsedBy[] Classes = Enum.GetValues<UsedBy>();

    private const int WidestMember = 70;

    internal static IEnumerable<string> Print(CodeModel model, DocWords docs)
    {
        var uses = new MemberUses(model, docs).Public();
        return
        [
            "Public types and members by their farthest user: tests and docs count where no room and no sample uses them.",
            "Foreign calls: it overrides or implements a member of the framework or a package, so its calls cannot be seen.",
            "",
            .. Summary(uses),
            .. uses.GroupBy(u => (u.Room, u.Farthest))
                .OrderBy(g => g.Key.Room, StringComparer.Ordinal).ThenBy(g => g.Key.Farthest)
                .SelectMany(g => Section($"{Names.Of(g.Key.Room)}: {Word(g.Key.Farthest)}", [.. g])),
        ];
    }

    private static IEnumerable<string> Section(string title, IReadOnlyList<MemberUse> uses) =>
        ["", $"{title} ({TextTable.Number(uses.Count)})", .. TextTable.Lay(["kind", "member", "users"], uses.Select(Row))];

    private static IEnumerable<string> Summary(IReadOnlyList<MemberUse> uses)
    {
        var rooms = uses.GroupBy(u => u.Room).Select(r => Counts(Names.Of(r.Key), [.. r]));
        return TextTable.Lay(["room", .. Classes.Select(Word), "all"], rooms.Append(Counts("all", uses)));
    }

    private static IReadOnlyList<string> Counts(string name, IReadOnlyList<MemberUse> uses) =>
        [name, .. Classes.Select(c => TextTable.Number(uses.Count(u => u.Farthest == c))), TextTable.Number(uses.Count)];

    private static string[] Row(MemberUse use) =>
    [
        Kinds.Word(use.Member.Kind),
        TextTable.Shorten(use.Member.ShortName + use.Member.Parameters, WidestMember),
        string.Join(", ", Users(use)),
    ];

    private static IEnumerable<string> Users(MemberUse use)
    {
        var own = use.InOwnRoom ? ["own room"] : Enumerable.Empty<string>();
        var docs = use.InDocs ? ["docs"] : Enumerable.Empty<string>();
        var files = Files("sample", use.SampleFiles).Concat(Files("test", use.TestFiles));
        return own.Concat(use.OtherRooms.Select(Names.Of)).Concat(files).Concat(docs);
    }

    private static IEnumerable<string> Files(string kind, int count) => count switch
    {
        0 => [],
        1 => [$"1 {kind} file"],
        _ => [$"{TextTable.Number(count)} {kind} files"],
    };

    private static string Word(UsedBy used) => used switch
    {
        UsedBy.AnotherRoom => "another room",
        UsedBy.Sample => "sample",
        UsedBy.OwnRoomOnly => "own room only",
        UsedBy.TestsAndDocsOnly => "tests and docs only",
        UsedBy.TestsOnly => "tests only",
        UsedBy.Nobody => "nobody",
        _ => "foreign calls",
    };
}

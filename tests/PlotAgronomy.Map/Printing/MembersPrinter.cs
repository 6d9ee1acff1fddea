using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Users;

namespace PlotAgronomy.Map.Printing;

/// <summary>Who uses what is public: a table of the rooms, then every type and member.</summary>
internal static class MembersPrinter
{
    private static readonly UsedBy[] Classes = Enum.GetValues<UsedBy>();

    internal static IEnumerable<string> Print(CodeModel model, DocWords docs)
    {
        var uses = new MemberUses(model, docs).All();
        return
        [
            "Public types and members by their farthest user: tests and docs count where no room and no sample uses them.",
            "Foreign calls: it overrides or implements a member of the framework or a package, so its calls cannot be seen.",
            "",
            .. Summary(uses),
            "",
            .. TextTable.Lay(["room", "used by", "kind", "member", "users"], ByUser(uses).Select(Row)),
        ];
    }

    private static IEnumerable<MemberUse> ByUser(IEnumerable<MemberUse> uses) =>
        uses.OrderBy(u => u.Room, StringComparer.Ordinal).ThenBy(u => u.Farthest);

    private static IEnumerable<string> Summary(IReadOnlyList<MemberUse> uses)
    {
        var rooms = uses.GroupBy(u => u.Room).Select(r => Counts(Names.Of(r.Key), [.. r]));
        return TextTable.Lay(["room", .. Classes.Select(Word), "all"], rooms.Append(Counts("all", uses)));
    }

    private static IReadOnlyList<string> Counts(string name, IReadOnlyList<MemberUse> uses) =>
        [name, .. Classes.Select(c => TextTable.Number(uses.Count(u => u.Farthest == c))), TextTable.Number(uses.Count)];

    private static string[] Row(MemberUse use) =>
    [
        Names.Of(use.Room),
        Word(use.Farthest),
        Word(use.Member.Kind),
        use.Member.ShortName + use.Member.Parameters,
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

    private static string Word(MemberKind kind) => kind switch
    {
        MemberKind.Type => "type",
        MemberKind.Constructor => "constructor",
        MemberKind.Method => "method",
        MemberKind.Operator => "operator",
        MemberKind.Property => "property",
        MemberKind.Indexer => "indexer",
        MemberKind.EnumValue => "enum value",
        MemberKind.Field => "field",
        _ => "event",
    };
}

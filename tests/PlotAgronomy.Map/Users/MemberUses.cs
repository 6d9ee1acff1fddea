using PlotAgronomy.Map.Layout;
using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Sources;

namespace PlotAgronomy.Map.Users;

/// <summary>Finds who uses each type and member of the library.</summary>
internal sealed class MemberUses
{
    private readonly CodeModel _model;
    private readonly Folders _folders;
    private readonly DocWords _docs;
    private readonly Dictionary<string, Part> _partOf;
    private readonly ILookup<string, Reference> _byMember;
    private readonly ILookup<string, Reference> _byType;
    private readonly ILookup<string, string> _calledInstead;

    internal MemberUses(CodeModel model, DocWords docs)
    {
        _model = model;
        _folders = new Folders(model);
        _docs = docs;
        _partOf = model.Files.ToDictionary(f => f.Path, f => f.Part);
        // A value that is set where it stands is not thereby used; the constructor of a parent is.
        var uses = model.References.Concat(model.Construction.Where(r => model.Members[r.Used].Kind == MemberKind.Constructor))
            .ToList();
        _byMember = uses.ToLookup(r => r.Used);
        _byType = uses
            .SelectMany(r => TypesAround(model.Members[r.Used]).Except(TypesAroundId(r.User)).Select(type => (type, r)))
            .ToLookup(pair => pair.type, pair => pair.r);
        _calledInstead = model.StandIns.ToLookup(s => s.Runs, s => s.Called);
    }

    internal IReadOnlyList<MemberUse> Public() => Of(Reach.Public);

    /// <summary>What is public or internal and used by nobody or by tests alone; of an unused type the type alone.</summary>
    internal IReadOnlyList<MemberUse> Unused()
    {
        var unused = Of(Reach.Internal).Where(u => u.Farthest is UsedBy.TestsOnly or UsedBy.Nobody).ToList();
        var types = unused.Where(u => u.Member.Kind == MemberKind.Type).Select(u => u.Member.FullName).ToHashSet();
        return [.. unused.Where(u => !TypesAround(u.Member).Any(type => type != u.Member.FullName && types.Contains(type)))];
    }

    private IReadOnlyList<MemberUse> Of(Reach least) =>
        [.. _model.Members.Values
            .Where(m => m.Reach >= least && !m.IsImplicit && _partOf[m.File] == Part.Library)
            .Select(Describe)
            .OrderBy(u => u.Room, StringComparer.Ordinal)
            .ThenBy(u => u.Member.FullName, StringComparer.Ordinal)
            .ThenBy(u => u.Member.Parameters, StringComparer.Ordinal)];

    private MemberUse Describe(CodeMember member)
    {
        string room = _folders.RoomOf(member.File);
        var files = UsesOf(member).Select(r => r.FromFile).Distinct().ToLookup(file => _partOf[file]);
        var rooms = files[Part.Library].Select(_folders.RoomOf).Distinct().Order(StringComparer.Ordinal).ToList();
        return new MemberUse(
            member,
            room,
            [.. rooms.Where(r => r != room)],
            rooms.Contains(room),
            files[Part.Sample].Count(),
            files[Part.Test].Count(),
            _docs.Name(member),
            _docs.NameInProse(member));
    }

    /// <summary>Of a type, the uses of anything in it from without; of a member, also the calls it answers for another.</summary>
    private IEnumerable<Reference> UsesOf(CodeMember member) => member.Kind == MemberKind.Type
        ? _byType[member.FullName]
        : CalledAs(member.Id).SelectMany(id => _byMember[id]).Where(r => r.User != member.Id);

    private IEnumerable<string> CalledAs(string id) => _calledInstead[id].SelectMany(CalledAs).Append(id).Distinct();

    private IEnumerable<string> TypesAroundId(string id) => _model.Members.TryGetValue(id, out var user) ? TypesAround(user) : [];

    private static IEnumerable<string> TypesAround(CodeMember member)
    {
        string type = member.Type;
        yield return Qualified(member.Namespace, type);
        while (type.LastIndexOf('.') is > 0 and int dot)
        {
            type = type[..dot];
            yield return Qualified(member.Namespace, type);
        }
    }

    private static string Qualified(string space, string type) => space.Length == 0 ? type : $"{space}.{type}";
}

using PlotAgronomy.Map.Model;

namespace PlotAgronomy.Map.Users;

/// <summary>A type or member with its users: the other rooms by name, the files of samples and tests by number.</summary>
internal sealed record MemberUse(
    CodeMember Member,
    string Room,
    IReadOnlyList<string> OtherRooms,
    bool InOwnRoom,
    int SampleFiles,
    int TestFiles,
    bool InDocs,
    bool InProse)
{
    internal UsedBy Farthest =>
        OtherRooms.Count > 0 ? UsedBy.AnotherRoom
        : SampleFiles > 0 ? UsedBy.Sample
        : InOwnRoom ? UsedBy.OwnRoomOnly
        : Member.FulfilsForeign ? UsedBy.ForeignCalls
        : InDocs ? UsedBy.TestsAndDocsOnly
        : TestFiles > 0 ? UsedBy.TestsOnly
        : UsedBy.Nobody;
}

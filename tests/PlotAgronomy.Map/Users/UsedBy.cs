namespace PlotAgronomy.Map.Users;

/// <summary>The farthest user of a public member.</summary>
internal enum UsedBy
{
    AnotherRoom,
    Sample,
    OwnRoomOnly,
    TestsAndDocsOnly,
    TestsOnly,
    Nobody,

    /// <summary>It fulfils a member of a foreign assembly, so its calls cannot be seen.</summary>
    ForeignCalls,
}

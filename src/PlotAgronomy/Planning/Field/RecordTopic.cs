namespace PlotAgronomy.Planning;

/// <summary>What a blank of the sheet asks to write down.</summary>
public enum RecordTopic
{
    /// <summary>Lime that was really spread, and the day.</summary>
    Lime,

    /// <summary>Fertilizer that was really spread, and the day.</summary>
    Fertilizer,

    /// <summary>Seed that was really sown, and the day.</summary>
    Seed,

    /// <summary>Gate and pace that gave the rate.</summary>
    Setting,

    /// <summary>The first rain after sowing, and the day.</summary>
    Rain,

    /// <summary>Seedlings counted at three to four weeks.</summary>
    Stand,

    /// <summary>Nitrogen that was given to the stand, and the day.</summary>
    Dressing,
}

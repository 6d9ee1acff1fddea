namespace PlotAgronomy.Calendar;

/// <summary>The date that a task is counted from.</summary>
internal enum TaskAnchor
{
    /// <summary>The planned day of sowing.</summary>
    Sowing,

    /// <summary>The whole window of sowing: what is done with the seed.</summary>
    SowingDay,

    /// <summary>The stated day of liming; else counted back from sowing.</summary>
    Lime,

    /// <summary>The last day the herbicide's label allows.</summary>
    Label,

    /// <summary>The window in which the smother crop is sown.</summary>
    Smother,

    /// <summary>The window in which it is killed.</summary>
    Kill,

    /// <summary>New Year of the year asked about, or of the next where its days are past.</summary>
    ThisYear,

    /// <summary>New Year after sowing.</summary>
    NextYear,

    /// <summary>The first such days of a year after sowing.</summary>
    AfterSowing,

    /// <summary>An early killing frost.</summary>
    Frost,

    /// <summary>The day that the lime's outlook names.</summary>
    NextSample,

    /// <summary>A stated date.</summary>
    Stated,

    /// <summary>The day of the test that decides before sowing; else counted back from sowing.</summary>
    Retest,

    /// <summary>The day of the test when the lime has its full effect.</summary>
    LateTest,

    /// <summary>The stated day of liming; else days of this year.</summary>
    StandLime,

    /// <summary>From the planned day of sowing to the day by which the sample is sent.</summary>
    Sample,

    /// <summary>The day on which it was really sown; counted in words where that may be any of several.</summary>
    Sown,

    /// <summary>No date: it is done as it comes.</summary>
    Open,

    /// <summary>As the words of a dose say.</summary>
    Dose,
}

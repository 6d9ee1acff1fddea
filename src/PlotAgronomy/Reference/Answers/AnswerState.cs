namespace PlotAgronomy;

/// <summary>How far a room could answer.</summary>
public enum AnswerState
{
    /// <summary>There is an answer.</summary>
    Given,

    /// <summary>Nothing is to be done, and that is known: not the same as no answer.</summary>
    NoneNeeded,

    /// <summary>A fact is missing without which there is no answer; the questions say which.</summary>
    Open,

    /// <summary>Nothing was asked: the plan holds nothing that this room could answer. Not the same as no need.</summary>
    NotAsked,
}

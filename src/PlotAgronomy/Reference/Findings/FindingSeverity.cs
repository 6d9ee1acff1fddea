namespace PlotAgronomy;

/// <summary>How serious a remark is.</summary>
public enum FindingSeverity
{
    /// <summary>Worth knowing; nothing to change.</summary>
    Note,

    /// <summary>Check before going on.</summary>
    Caution,

    /// <summary>Likely mistake, loss or harm.</summary>
    Warning,
}

namespace PlotAgronomy.Nutrients;

/// <summary>When the legume grew whose nitrogen is to be credited.</summary>
public enum LegumeStand
{
    /// <summary>It grew there before and is gone: plowed, killed or dead.</summary>
    Earlier,

    /// <summary>It stands there now, established.</summary>
    Existing,

    /// <summary>It is sown together with the crop: it gives nothing in the first season.</summary>
    SownTogether,
}

namespace PlotAgronomy.Fertilizers;

/// <summary>Whether two materials may share a hopper or a heap.</summary>
public enum MixRule
{
    /// <summary>Mixes and keeps.</summary>
    Compatible,

    /// <summary>Mix and spread the same day; never store.</summary>
    SameDayOnly,

    /// <summary>Never mix; spread in separate passes.</summary>
    Never,
}

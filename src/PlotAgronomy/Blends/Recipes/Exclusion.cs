namespace PlotAgronomy.Blends;

/// <summary>Why a lot was not considered for a recipe.</summary>
internal enum Exclusion
{
    NoPrice,
    NothingAlive,
    NoSeedCount,
    NoFullRate,
    PhOutside,
    DrainageOutside,
    DearerThanAnother,
}

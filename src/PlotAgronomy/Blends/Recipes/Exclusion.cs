namespace PlotAgronomy.Blends;

/// <summary>Why a lot was not considered for a recipe.</summary>
internal enum Exclusion
{
    NothingAlive,
    NoSeedCount,
    NoFullRate,
    PhOutside,
    DrainageOutside,
    DearerThanAnother,
}

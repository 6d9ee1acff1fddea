namespace PlotAgronomy.Nutrients;

/// <summary>The idea behind a recommendation system: why two honest systems differ on one soil.</summary>
internal enum SystemPhilosophy
{
    /// <summary>Feed this year's crop as far as the soil cannot; the soil itself is not raised.</summary>
    Sufficiency,

    /// <summary>Raise the soil to a level over some years, then put back what is carried off.</summary>
    BuildUpAndMaintenance,

    /// <summary>So many pounds for every unit of yield hoped for, fewer as the test rises.</summary>
    YieldGoal,

    /// <summary>Says only whether fertilizer is likely to pay.</summary>
    CriticalLevel,

    /// <summary>A ceiling in law; not advice.</summary>
    LegalMaximum,
}

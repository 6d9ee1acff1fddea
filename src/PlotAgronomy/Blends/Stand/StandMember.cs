using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>A kind of the coming stand, sown now or standing already, as the limits see it.</summary>
internal readonly record struct StandMember(
    CropKind Kind,
    double Share,
    double LiveSeedsPerSquareFoot,
    bool MustLiveOn,
    bool IsSown
)
{
    internal static IEnumerable<StandMember> Of(Blend blend, IReadOnlyList<KindShare> existing) =>
        blend
            .Parts.Select(p => new StandMember(
                p.Kind,
                p.ShareOfFullStand.Chosen,
                p.LiveSeedsPerSquareFoot,
                p.Component.MustLiveOn,
                true
            ))
            .Concat(
                existing.Select(e => new StandMember(e.Kind, e.ShareOfFullStand, 0, e.Kind.LifeCycle != LifeCycle.Annual, false))
            );
}

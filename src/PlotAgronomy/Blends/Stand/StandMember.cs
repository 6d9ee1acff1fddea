using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>A kind of the coming stand, sown now or standing already, as the limits see it.</summary>
internal readonly record struct StandMember(CropKind Kind, double Share, bool MustLiveOn)
{
    internal static IEnumerable<StandMember> Of(Blend blend, IReadOnlyList<KindShare> existing) =>
        blend
            .Parts.Select(p => new StandMember(p.Kind, p.ShareOfFullStand.Chosen, p.Component.MustLiveOn))
            .Concat(existing.Select(e => new StandMember(e.Kind, e.ShareOfFullStand, e.Kind.LifeCycle != LifeCycle.Annual)));
}

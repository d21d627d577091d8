using FluentValidation;

namespace ShelfSafe.Pack;

/// <summary>What a food row must hold to be believed.</summary>
internal sealed class FoodRowValidator : AbstractValidator<FoodRow>
{
    /// <summary>Upper end of the acid class (21 CFR 114.3).</summary>
    private const double AcidLimit = 4.6;

    /// <summary>Sets the rules.</summary>
    public FoodRowValidator()
    {
        RuleFor(row => row.Id).NotEmpty().WithMessage("the id is empty");
        RuleFor(row => row.Name).NotEmpty().WithMessage("the name is empty");
        RuleFor(row => row.PhLow).InclusiveBetween(0, 14).WithMessage("a pH lies from 0 to 14");
        RuleFor(row => row.PhHigh).InclusiveBetween(0, 14).WithMessage("a pH lies from 0 to 14");
        RuleFor(row => row).Must(row => row.PhLow is null || row.PhHigh is null || row.PhLow <= row.PhHigh)
            .WithMessage("ph_low is above ph_high");
        RuleFor(row => row).Must(row => row.Acidity != FoodAcidity.Acid || row.PhHigh is null || row.PhHigh <= AcidLimit)
            .WithMessage("a food counts as acid only if its whole published range is at or below 4.6");
        RuleFor(row => row.Source).NotEmpty().WithMessage("the row has no source");
    }
}

using ShelfSafe.Foods;
using Xunit;

namespace ShelfSafe.Tests.Foods;

public sealed class KindBitsTests
{
    [Fact]
    public void At_EveryPlace_IsASetOfItsOwn()
    {
        KindBits all = default;
        for (int place = 0; place < KindBits.Most; place++)
        {
            KindBits own = KindBits.At(place);
            Assert.False(all.Meets(own));
            all |= own;
            Assert.True(all.Meets(own));
        }

        Assert.Equal(new(UInt128.MaxValue, UInt128.MaxValue), all);
    }
}
